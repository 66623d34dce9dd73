package putback.tightening;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import putback.quantity.Parsed;

class ScrewThreadTest {
    @ParameterizedTest
    @CsvSource({
        "M12x1.25, M12x1.25", "'M12 x 1,25', M12x1.25", "M12×1.75, M12x1.75", "M12, M12x1.75", "m8, M8x1.25",
        "1/2-20, 1/2-20 UNF", "1/2-13 UNC, 1/2-13 UNC", "10-32, 10-32 UNF", "#10-24, 10-24 UNC", "1-14, 1-14 UNS",
        "1-1/8-7, 1-1/8-7 UNC"
    })
    void everySpelling_isRead(String written, String designation) {
        assertThat(read(written).designation()).isEqualTo(designation);
    }

    @ParameterizedTest
    @CsvSource({
        "M13x1.3, 'M13 is not a size of ISO 261; the nearest: M12 and M14'",
        "M12x1.3, '1.3 mm is not one of its pitches; ISO 261 gives M12 1.75, 1.5, 1.25, 1 mm'",
        "M26, 'needs its pitch; ISO 261 gives M26 1.5 mm'",
        "1/2-19, there is no 1/2-19",
        "1/2-20 UNC, is UNF",
        "M, is not a thread",
        "'', is not a thread",
        "M-12, is not a thread",
        "M12x, is not a thread",
        "M999, 'the nearest: M39'"
    })
    void whatIsNoThread_isRefusedInWords(String written, String because) {
        Parsed<ScrewThread> parsed = ScrewThread.parse(written);
        assertThat(((Parsed.Refused<ScrewThread>) parsed).message()).contains(because);
    }

    @Test
    void sizes_followFromDiameterAndPitch() {
        ScrewThread thread = read("M12x1.25");
        assertThat(thread.pitchDiameterMm()).isCloseTo(12 - 0.649519 * 1.25, offset(1e-6));
        assertThat(thread.rootDiameterMm()).isCloseTo(12 - 1.226869 * 1.25, offset(1e-6));
        assertThat(thread.minorDiameterMm()).isCloseTo(12 - 1.082532 * 1.25, offset(1e-6));
        assertThat(thread.stressDiameterMm()).isCloseTo(12 - 0.9382 * 1.25, offset(1e-4));
    }

    private static ScrewThread read(String written) {
        return ((Parsed.Value<ScrewThread>) ScrewThread.parse(written)).value();
    }
}

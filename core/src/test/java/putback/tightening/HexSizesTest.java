package putback.tightening;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import putback.quantity.Length;
import putback.quantity.Parsed;

class HexSizesTest {
    /** Widths across flats of published dimension sheets of ISO 4014 and 4017. */
    @ParameterizedTest
    @CsvSource({"M5, 8", "M6, 10", "M8, 13", "M10, 16", "M12, 18", "M16, 24", "M20, 30", "M24, 36"})
    void theSizeOfTheStandard_goesWithItsThread_andSaysSo(String thread, double size) {
        assertThat(HexSizes.across(thread(thread)).get(0)).isEqualTo(size);
        assertThat(HexSizes.said(thread(thread), new Length(size))).endsWith(", by ISO 4014.");
    }

    /** DIN 931 and 933, EN 14399-4 and EN 1665, from published sheets. */
    @ParameterizedTest
    @CsvSource({"M10, 17", "M12, 19", "M12, 22", "M16, 27", "M20, 32", "M22, 36", "M24, 41", "M12x1.5, 18"})
    void theSizesOfOtherStandards_areMet(String thread, double size) {
        assertThat(HexSizes.doubt(thread(thread), new Length(size))).isNull();
    }

    @ParameterizedTest
    @ValueSource(strings = {"M12x1.25, 13", "M12x1.5, 13", "M12x1.25, 14", "M10x1.25, 10", "M10x1.5, 11"})
    void theSizeOfAPipeUnion_isDoubtedOnTheThreadOfABolt(String both) {
        String[] cells = both.split(", ", -1);
        Length hex = new Length(Double.parseDouble(cells[1]));
        assertThat(HexSizes.doubt(thread(cells[0]), hex)).contains("does not go with " + cells[0]);
        assertThat(HexSizes.said(thread(cells[0]), hex))
                .startsWith("A hexagon of " + cells[1] + " mm does not go with");
    }

    @ParameterizedTest
    @CsvSource({"M10x1, 10", "M10x1, 11", "M12x1, 13", "M12x1, 14"})
    void theSizeOfAPipeUnion_goesWithItsOwnThread_andWithNothingElse(String thread, double size) {
        assertThat(HexSizes.doubt(thread(thread), new Length(size))).isNull();
        assertThat(HexSizes.said(thread(thread), new Length(size)))
                .contains("only at pipe unions and bleed nipples, where ISO 4014 has");
    }

    @Test
    void aThreadWithoutKnownSizes_isHeldAgainstNothing() {
        assertThat(HexSizes.said(thread("M9x1.25"), new Length(13))).contains("held against nothing");
    }

    private static ScrewThread thread(String text) {
        return ((Parsed.Value<ScrewThread>) ScrewThread.parse(text)).value();
    }
}

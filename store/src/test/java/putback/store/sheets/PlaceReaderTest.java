package putback.store.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import putback.labour.price.Overrun;
import putback.labour.price.PlaceProfile;

class PlaceReaderTest {
    private static PlaceProfile place(String id) {
        return ((PlaceRead.Sound) PlaceReader.open(id)).profile();
    }

    static java.util.List<String> ids() {
        return PlaceReader.ids();
    }

    @ParameterizedTest
    @MethodSource("ids")
    void everyPlaceThatComesWithTheProgram_isSound_andNamesItsSource(String id) {
        PlaceProfile place = place(id);
        assertThat(place.id()).isEqualTo(id);
        assertThat(place.source()).isNotEmpty();
        assertThat(place.name()).isNotEmpty();
    }

    @Test
    void overrun_takesTheLesserOrTheGreater_andNeverMoreThanItsMost() {
        Overrun michigan = place("michigan").overrun();
        assertThat(michigan.upTo(new BigDecimal("80.00"))).isEqualTo("88.00");
        assertThat(michigan.upTo(new BigDecimal("500.00"))).isEqualTo("510.00");
        Overrun florida = place("florida").overrun();
        assertThat(florida.upTo(new BigDecimal("80.00"))).isEqualTo("90.00");
        assertThat(florida.upTo(new BigDecimal("300.00"))).isEqualTo("330.00");
        assertThat(florida.upTo(new BigDecimal("900.00"))).isEqualTo("950.00");
        assertThat(place("california").overrun().upTo(BigDecimal.TEN)).isEqualTo("10.00");
        assertThat(place("washington").overrun().upTo(BigDecimal.TEN)).isNull();
        assertThat(place("not-set").overrun().upTo(BigDecimal.TEN)).isNull();
    }
}

package putback.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import putback.quantity.Parsed;

class ReadingsOfACarTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 2);

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {"0;0", "128400;128400", "128 400;128400", "128,400;128400", "128.400;128400", "1'234'567;1234567"})
    void aClock_isReadWithAndWithoutGroups(String typed, int reading) {
        assertThat(Odometer.read(typed)).isEqualTo(new Parsed.Value<>(new Odometer(reading)));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                " ",
                "abc",
                "-5",
                "120,345.5.5",
                "12,34",
                "1234.5",
                "12345678",
                "128400 km",
                ",128",
                "1,,234",
                "٣"
            })
    void whatNoClockShows_isRefused_withWhatToWrite(String typed) {
        assertThat(Odometer.read(typed).refusal()).contains("such as 128400");
    }

    @ParameterizedTest
    @CsvSource({"2014,2014,0", "2014-03,2014,3", "3/2014,2014,3", "03.2014,2014,3", "2026-11,2026,11", "2026,2026,0"})
    void aCar_isBuiltInAYear_orAYearAndMonth(String typed, int year, int month) {
        assertThat(Built.read(typed, TODAY)).isEqualTo(new Parsed.Value<>(new Built(year, month)));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "13/2015",
                "2015-00",
                "2031-01",
                "2026-12",
                "1850",
                "about 2010",
                "2014-03-05",
                "-",
                "/2014",
                "2014/",
                "99999"
            })
    void whatIsNoMonthOfThePast_isRefused_withWhatToWrite(String typed) {
        assertThat(Built.read(typed, TODAY).refusal()).contains("such as 2014 or 2014-03");
    }
}

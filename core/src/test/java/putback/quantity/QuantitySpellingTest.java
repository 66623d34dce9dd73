package putback.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class QuantitySpellingTest {
    private static final double EXACT = 1e-12;

    @ParameterizedTest
    @ValueSource(
            strings = {
                "90 N·m",
                "90 N.m",
                "90 Nm",
                "90N·m",
                "90Nm",
                " 90  N·m ",
                "90 N⋅m",
                "90 N∙m",
                "90 N•m",
                "90 N*m",
                "90 N-m",
                "90 N m",
                "+90 N·m",
                "90.0 N·m",
                "90,0 N·m",
                "090 N·m",
                "90\u00a0N·m",
                "90\u202fN·m"
            })
    void ninety_newton_metres_however_written(String text) {
        assertThat(Torque.parse(text)).isEqualTo(new Parsed.Value<>(new Torque(90)));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "66 lbf·ft",
                "66 ft·lbf",
                "66 lbf.ft",
                "66 ft-lb",
                "66 lb-ft",
                "66lb-ft",
                "66 lb·ft",
                "66 lbft",
                "66 lb ft",
                "66 ft lb",
                "66 ft-lbs",
                "66 ft-lbf",
                "66 lbf⋅ft",
                "66 ft‑lb"
            })
    void pound_feet_however_written(String text) {
        assertThat(newtonMetres(text)).isEqualTo(66 * Torque.NEWTON_METRES_PER_POUND_FOOT);
    }

    @ParameterizedTest
    @ValueSource(strings = {"90 lbf·in", "90 in-lb", "90 in·lbf", "90 lbf.in", "90 lb-in", "90 in-lbs"})
    void pound_inches_however_written(String text) {
        assertThat(newtonMetres(text)).isCloseTo(7.5 * Torque.NEWTON_METRES_PER_POUND_FOOT, within(EXACT));
    }

    @Test
    void kilogram_force_metres() {
        assertThat(newtonMetres("10 kgf·m")).isCloseTo(98.0665, within(EXACT));
        assertThat(newtonMetres("10 kgf.m")).isEqualTo(newtonMetres("10 kgfm"));
    }

    @ParameterizedTest
    @CsvSource({
        "18 mm, 18",
        "1.5 cm, 15",
        "0.4 m, 400",
        "1 in, 25.4",
        "1/2 in, 12.7",
        "9/16 in, 14.2875",
        "1 1/8 in, 28.575",
        "1-1/8 in, 28.575",
        "13/16in, 20.6375",
        "-15 mm, -15",
        "−15 mm, -15",
        "–15mm, -15",
        ".5 mm, 0.5"
    })
    void lengths_in_millimetres(String text, double millimetres) {
        assertThat(Length.parse(text)).isEqualTo(new Parsed.Value<>(new Length(millimetres)));
    }

    @ParameterizedTest
    @CsvSource({"90 deg, 90", "90°, 90", "-0.5 deg, -0.5", "90 º, 90"})
    void angles_in_degrees(String text, double degrees) {
        assertThat(Angle.parse(text)).isEqualTo(new Parsed.Value<>(new Angle(degrees)));
    }

    @Test
    void a_radian_is_180_degrees_over_pi() {
        double degrees = Angle.parse("1 rad").or(new Angle(0), message -> {}).degrees();
        assertThat(degrees).isCloseTo(180 / Math.PI, within(EXACT));
    }

    @ParameterizedTest
    @CsvSource({"3 min, 3", "36 s, 0.6", "1.5 h, 90", "1 s, 0.016667"})
    void times_are_exact_to_a_millionth_of_a_minute(String text, String minutes) {
        assertThat(Minutes.parse(text)).isEqualTo(new Parsed.Value<>(Minutes.of(minutes)));
    }

    @ParameterizedTest
    @CsvSource({"50 kN, 50000", "50000 N, 50000", "1 lbf, 4.4482216152605", "0.3 kN, 300"})
    void forces_in_newtons(String text, double newtons) {
        assertThat(Force.parse(text)).isEqualTo(new Parsed.Value<>(new Force(newtons)));
    }

    @Test
    void masses_stresses_spring_rates_and_distances() {
        assertThat(Mass.parse("1.5 kg")).isEqualTo(new Parsed.Value<>(new Mass(1.5)));
        assertThat(Mass.parse("2 lb")).isEqualTo(new Parsed.Value<>(new Mass(0.90718474)));
        assertThat(Stress.parse("640 MPa")).isEqualTo(new Parsed.Value<>(new Stress(640)));
        assertThat(SpringRate.parse("28,5 N/mm")).isEqualTo(new Parsed.Value<>(new SpringRate(28.5)));
        assertThat(Distance.parse("120000 km")).isEqualTo(new Parsed.Value<>(new Distance(120_000)));
        for (String miles : new String[] {"56000 mi", "56000 miles", "56000mile"}) {
            assertThat(Distance.parse(miles)).as(miles).isEqualTo(new Parsed.Value<>(new Distance(90_123.264)));
        }
    }

    @Test
    void a_decimal_is_kept_exactly() {
        assertThat(Quantities.parse("0,10 N·m", Kind.TORQUE)).isEqualTo(new Parsed.Value<>(new BigDecimal("0.10")));
        assertThat(PlainNumber.parse("92,00")).isEqualTo(new Parsed.Value<>(new BigDecimal("92.00")));
    }

    private static double newtonMetres(String text) {
        return Torque.parse(text)
                .or(new Torque(Double.MAX_VALUE), message -> {})
                .newtonMetres();
    }
}

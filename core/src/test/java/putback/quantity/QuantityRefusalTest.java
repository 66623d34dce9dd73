package putback.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class QuantityRefusalTest {
    private static final List<Function<String, Parsed<?>>> ALL = List.of(
            Torque::parse,
            Length::parse,
            Angle::parse,
            Minutes::parse,
            Force::parse,
            Mass::parse,
            Stress::parse,
            SpringRate::parse,
            Distance::parse,
            PlainNumber::parse);

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                " ",
                "NaN",
                "NaN N·m",
                "Infinity",
                "-Infinity N·m",
                "1e3 N·m",
                "1e999 N·m",
                "0x1p3 N·m",
                "90 furlong",
                "90",
                "ninety N·m",
                "--90 N·m",
                "9 0 N·m",
                "90 N·m·m",
                "1,000.5 N·m",
                "1.2.3 N·m",
                "٣ N·m",
                "N·m",
                "- N·m",
                "1/2 N·m",
                "1/0 in",
                "5. N·m",
                "90 N·m 20 N·m",
                "123456789012345678901 N·m",
                "9999999999 N·m",
                "0.000000000000000000001 N·m"
            })
    void what_is_no_torque_is_refused_by_name_with_an_example(String text) {
        assertThat(refusal(Torque.parse(text)))
                .startsWith("\"" + text.substring(0, Math.min(20, text.length())))
                .contains("such as 98 N·m or 72 lbf·ft");
    }

    @ParameterizedTest
    @CsvSource({
        "12 mm, is a length",
        "90 deg, is an angle",
        "3 min, is a time",
        "50 kN, is a force",
        "1.5 kg, is a mass",
        "640 MPa, is a stress",
        "28 N/mm, is a spring rate",
        "5 km, is a distance",
        "300 K, K is not a unit of torque",
        "90 J, J is not a unit of torque"
    })
    void another_kind_of_quantity_is_no_torque(String text, String said) {
        assertThat(refusal(Torque.parse(text))).contains(text).contains(said);
    }

    @ParameterizedTest
    @CsvSource({"90 nm, Nm", "90 NM, Nm", "90 LBF·FT, lbf·ft", "90 Ft-Lb, ft-lb"})
    void a_unit_in_the_wrong_case_is_guessed_but_not_taken(String text, String meant) {
        assertThat(refusal(Torque.parse(text))).contains("maybe " + meant + " was meant");
    }

    @Test
    void a_missing_unit_is_named_as_missing() {
        assertThat(refusal(Torque.parse("90")))
                .isEqualTo("\"90\" has no unit; write it in N·m, lbf·ft, lbf·in or kgf·m, such as 98 N·m or 72 lbf·ft");
    }

    @Test
    void a_length_is_no_distance_driven_and_metres_are_not_taken_for_miles() {
        assertThat(refusal(Distance.parse("56000 m")))
                .isEqualTo(
                        "\"56000 m\" is in metres, which no odometer counts; if miles are meant write mi; write it in"
                                + " km or mi, such as 120000 km or 75000 mi");
        assertThat(refusal(Distance.parse("5 mm"))).contains("is a length, not a distance");
        assertThat(refusal(Length.parse("5 km"))).contains("is a distance, not a length");
    }

    @Test
    void a_refusal_is_one_harmless_line_however_hostile_the_text() {
        String hostile = "90 \u001b[2J\nfoo\u202e" + "x".repeat(500);
        String message = refusal(Torque.parse(hostile));
        assertThat(message).hasSizeLessThan(300).doesNotContain("\n", "\u001b", "\u202e");
    }

    @Test
    void a_plain_number_takes_no_unit_and_no_exponent() {
        for (String text : List.of("5 mm", "1e3", "1/2", "", "x", "NaN", "0x10", "1_000")) {
            assertThat(refusal(PlainNumber.parse(text))).as(text).contains("is not a plain number");
        }
    }

    @Test
    void no_text_whatever_makes_parsing_throw() {
        String alphabet = "0123456789.,+-−/ eExXNnMmLlBbFfTtIiKkGgHhSsDd·°'\"\\\u0000\u00a0\ud800½";
        for (long seed = 1; seed <= 20_000; seed++) {
            Random random = new Random(seed);
            StringBuilder text = new StringBuilder();
            for (int length = random.nextInt(14); length > 0; length--) {
                text.append(alphabet.charAt(random.nextInt(alphabet.length())));
            }
            for (Function<String, Parsed<?>> parse : ALL) {
                assertThat(parse.apply(text.toString())).as("seed %d", seed).isNotNull();
            }
        }
    }

    private static String refusal(Parsed<?> parsed) {
        assertThat(parsed).isInstanceOf(Parsed.Refused.class);
        return ((Parsed.Refused<?>) parsed).message();
    }
}

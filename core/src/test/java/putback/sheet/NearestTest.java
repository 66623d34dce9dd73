package putback.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NearestTest {
    private static final List<String> KEYS = List.of("title", "torque", "hex", "minutes", "tighten", "price");

    @ParameterizedTest
    @CsvSource({"titel, title", "torqe, torque", "hexx, hex", "minuts, minutes", "prize, price", "tigthen, tighten"})
    void a_slip_of_the_finger_is_guessed(String written, String meant) {
        assertThat(Nearest.to(written, KEYS)).isEqualTo(meant);
    }

    @ParameterizedTest
    @CsvSource({"colour", "xyz", "t"})
    void what_is_too_far_off_is_not_guessed(String written) {
        assertThat(Nearest.to(written, KEYS)).isEmpty();
    }

    @Test
    void of_two_alike_the_first_is_taken() {
        assertThat(Nearest.to("cap", List.of("cup", "cop"))).isEqualTo("cup");
    }

    @Test
    void endless_words_are_not_compared() {
        assertThat(Nearest.to("x".repeat(100_000), List.of("x".repeat(100_000))))
                .isEmpty();
        assertThat(Nearest.to("hex", Collections.nCopies(3, "x".repeat(100_000))))
                .isEmpty();
    }
}

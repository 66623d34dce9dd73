package putback.app.text;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class LettersTest {
    @Test
    void ascii_keepsUnitsAndLettersReadable() {
        assertThat(Letters.shown("98 N·m, 90°, Bügel, ○ ● ◐ 3–4", true)).isEqualTo("98 N.m, 90 deg, Bugel, o * = 3-4");
        assertThat(Letters.shown("車輪", true)).isEqualTo("??");
    }

    @Test
    void nothing_steersTheTerminal() {
        assertThat(Letters.shown("a\u001b[31m\u202eb\u0007", false)).isEqualTo("a?[31m?b?");
    }

    @Test
    void width_countsColumns() {
        assertThat(Letters.width("Bügel")).isEqualTo(5);
        assertThat(Letters.width("Bu\u0308gel")).isEqualTo(5);
        assertThat(Letters.width("車輪")).isEqualTo(4);
    }
}

package putback.app.papers;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class PrintableTest {
    @Test
    void figure_staysWithItsUnitAndNothingElseIsTouched() {
        assertThat(Printable.joined("98 N·m (72 lbf·ft), 18 mm socket, 5 min; 3 minds"))
                .isEqualTo("98\u00a0N·m (72\u00a0lbf·ft), 18\u00a0mm socket, 5\u00a0min; 3 minds");
        assertThat(Printable.joined("{ width: 4; min-height: 2mm }")).isEqualTo("{ width: 4; min-height: 2mm }");
    }

    @Test
    void control_surrogateAndEmoji_areSaidAndNeverLetThrough() {
        assertThat(Printable.page("<p>a\u0007b\ud83dc\ud83d\udd27\ud83d\udd27</p>"))
                .isEqualTo("<p>a[1 sign not printable]b[1 sign not printable]c[2 signs not printable]</p>");
    }

    @Test
    void letterInADrawing_isASquareSoThatThePictureKeepsItsWidth() {
        assertThat(Printable.page("<svg><text>前a</text></svg>前"))
                .isEqualTo("<svg><text>□a</text></svg>[1 Han letter not printable]");
    }
}

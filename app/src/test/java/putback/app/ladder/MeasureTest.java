package putback.app.ladder;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Wrapping and shortening of lettering. */
class MeasureTest {
    @Test
    void text_thatFitsStaysWhole() {
        assertThat(Measure.wrap("Wheel nuts", 12, 200, 3)).containsExactly("Wheel nuts");
    }

    @Test
    void line_breaksAtASpace() {
        assertThat(Measure.wrap("Stabiliser link to strut", 12, 85, 3)).containsExactly("Stabiliser link", "to strut");
    }

    @Test
    void figure_staysWithItsUnitWhileThereIsAnotherSpace() {
        assertThat(Measure.wrap("hold 18\u00a0mm", 12, 50, 3)).containsExactly("hold", "18\u00a0mm");
    }

    @Test
    void word_thatFitsNoLineIsBroken() {
        assertThat(String.join("", Measure.wrap("abcdefghijklmnopqrstuvwxyz", 12, 60, 9)))
                .isEqualTo("abcdefghijklmnopqrstuvwxyz");
    }

    @Test
    void whatDoesNotFit_endsInAnEllipsis() {
        List<String> lines = Measure.wrap("one two three four five six seven eight", 12, 50, 2);
        assertThat(lines).hasSize(2);
        assertThat(lines.get(1)).endsWith("\u2026");
        assertThat(lines).allMatch(line -> Measure.width(line, 12) <= 50);
    }

    @Test
    void pairsOfSurrogates_stayTogether() {
        String wrench = Character.toString(0x1f527);
        assertThat(Measure.wrap(wrench.repeat(5), 12, 26, 9)).containsExactly(wrench + wrench, wrench + wrench, wrench);
    }

    @Test
    void noWidthAtAll_stillEnds() {
        assertThat(Measure.wrap("ab c", 12, 0, 4)).isNotEmpty();
    }
}

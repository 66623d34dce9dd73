package putback.app.web.planning;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import putback.app.text.RowReport;

class StuckViewTest {
    private static StuckView.Answer answer(Map<String, String> typed, String... near) {
        return Objects.requireNonNull(StuckView.of(typed, List.of(near)).answer());
    }

    @Test
    void nothingAsked_isNoAnswerAndNoFault() {
        StuckView view = StuckView.of(Map.of(), List.of());
        assertThat(view.answer()).isNull();
        assertThat(view.wrong()).isEmpty();
    }

    @Test
    void whatIsNear_bansWithEveryReason_whatCannotBeMovedFirst() {
        RowReport row = answer(Map.of("refuses", "stuck"), "hose", "gas").row();
        assertThat(row.banned()).anySatisfy(out -> {
            assertThat(out.name()).startsWith("heat");
            assertThat(out.reasons()).hasSize(2);
            assertThat(out.reasons().get(0)).contains("near gas");
            assertThat(out.reasons().get(1)).contains("near hose");
        });
        assertThat(row.tries()).noneSatisfy(one -> assertThat(one.name()).startsWith("heat"));
    }

    @Test
    void nothingNamedAsNear_saysToLookFirst() {
        assertThat(answer(Map.of("refuses", "stuck")).row().cautions())
                .anySatisfy(caution -> assertThat(caution).contains("Nobody has said what is near. Look first"));
    }

    @Test
    void itSaysWhenToStopAndAsk() {
        assertThat(answer(Map.of("kind", "bolt-nut")).row().ending())
                .anySatisfy(said -> assertThat(said).contains("After two without movement, or ten minutes, stop"))
                .anySatisfy(said -> assertThat(said).contains("stop and ask"));
    }

    @Test
    void scrap_losesNothing() {
        assertThat(answer(Map.of("scrapped", "yes", "price", "80")).row().tries())
                .allSatisfy(one -> assertThat(one.loses())
                        .noneSatisfy(said -> assertThat(said).contains("for 80.00")));
        assertThat(answer(Map.of("price", "80")).row().tries()).anySatisfy(one -> assertThat(one.loses())
                .anySatisfy(said -> assertThat(said).contains("for 80.00")));
    }

    @Test
    void whatIsWrong_isSaidAtItsField() {
        StuckView view = StuckView.of(
                Map.of("thread", "Q12", "rate", "0", "price", "-1", "kind", "nut", "refuses", "in bore"), List.of());
        assertThat(view.answer()).isNull();
        assertThat(view.wrong("thread")).contains("Q12");
        assertThat(view.wrong("rate")).contains("60.00");
        assertThat(view.wrong("price")).isNotEmpty();
        assertThat(view.wrong("refuses")).contains("nut", "in bore");
    }

    @Test
    void aPressedPart_isAskedInItsOwnWay() {
        assertThat(answer(Map.of("kind", "press")).row().tries().get(0).name()).isNotEmpty();
    }
}

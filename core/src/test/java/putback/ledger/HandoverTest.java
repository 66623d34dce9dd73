package putback.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import putback.plan.Planned;
import putback.plan.Planner;
import putback.plan.steps.ASheet;
import putback.plan.steps.Cars;
import putback.sheet.Assembly;

class HandoverTest {
    private final Assembly car = Cars.strut();
    private final Promised promised =
            PlanPromise.of(((Planned.Sound) Planner.plan(car, ASheet.wanted(car, "left.strut"))).plan());

    private Handover after(int steps) {
        List<Event> events = new ArrayList<>();
        for (PlanStep step : promised.steps().subList(0, steps)) {
            if (step.newFastener() && step.did() == Did.START) {
                events.add(AnEvent.of(Did.REPLACE_FASTENER)
                        .at(String.valueOf(step.joint()))
                        .event());
            }
            String by = step.did() == Did.SECOND_LOOK ? "K" : "M";
            events.add(AnEvent.of(step)
                    .by(by, Instant.parse("2026-03-02T09:00:00Z").plusSeconds(60L * events.size()))
                    .event());
        }
        return Handover.of(Standing.of(promised, events));
    }

    private int place(Did did, String id) {
        for (int i = 0; i < promised.steps().size(); i++) {
            PlanStep step = promised.steps().get(i);
            if (step.did() == did && (id.equals(step.joint()) || id.equals(step.part()))) {
                return i + 1;
            }
        }
        throw new IllegalArgumentException(did + " " + id);
    }

    @Test
    void halfWay_itSaysWhatIsOut_whatIsNext_andWhatMustNotBeDone() {
        Handover card = after(place(Did.TAKE_OFF, "left.wheel"));
        assertThat(card.where()).startsWith("The car stands raised; ").endsWith(" steps are left.");
        assertThat(card.out()).contains("Wheel nuts, left");
        assertThat(card.away()).contains("Wheel, left: off");
        assertThat(card.mustNot().get(0)).startsWith("Do not lower it on its wheels: ");
        assertThat(card.mustNot().get(1)).startsWith("Do not drive it: wheel nuts, left: still open, and ");
        assertThat(card.next()).isEqualTo(promised.steps().get(place(Did.TAKE_OFF, "left.wheel")));
        assertThat(card.last().by()).isEqualTo("M");
    }

    @Test
    void wheelNutsRunDown_mayBeLowered_butNotDriven() {
        Handover card = after(place(Did.RUN_DOWN, "left.wheel-nuts"));
        assertThat(card.loose()).contains("Wheel nuts, left: loose on purpose");
        assertThat(card.mustNot())
                .hasSize(1)
                .first()
                .asString()
                .startsWith("Do not drive it: wheel nuts, left: run down");
    }

    @Test
    void anAidStays_untilItsStepHasCome() {
        int on = place(Did.SUPPORT, "left.spring");
        int off = place(Did.RELEASE, "left.spring");
        assertThat(after(on).mustNot())
                .contains("Do not take the spring compressor off spring, left before step "
                        + promised.steps().get(off - 1).number() + ".");
        assertThat(after(off - 1).mustNot()).noneMatch(line -> line.contains("spring compressor"));
        assertThat(after(off - 1).aids()).contains("spring compressor on spring, left");
        assertThat(after(off).aids()).doesNotContain("spring compressor on spring, left");
    }

    @Test
    void whenAllIsDone_nothingIsForbidden() {
        Handover card = after(promised.steps().size());
        assertThat(card.mustNot()).isEmpty();
        assertThat(card.next()).isNull();
        assertThat(card.where()).isEqualTo("The car stands on wheels; no step is left.");
    }
}

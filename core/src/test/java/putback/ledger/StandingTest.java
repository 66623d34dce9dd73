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
import putback.sheet.Height;

class StandingTest {
    private static final String NUTS = "left.wheel-nuts";

    private final Assembly car = Cars.strut();
    private final Promised promised =
            PlanPromise.of(((Planned.Sound) Planner.plan(car, ASheet.wanted(car, "left.strut"))).plan());

    /** All that the plan has up to a step, done. */
    private Standing upTo(Did did, String joint) {
        List<Event> events = new ArrayList<>();
        for (PlanStep step : promised.steps()) {
            events.add(AnEvent.of(step).event());
            if (step.did() == did && joint.equals(step.joint())) {
                break;
            }
        }
        return Standing.of(promised, events);
    }

    private JointState nuts(Standing standing) {
        return standing.joints().getOrDefault(NUTS, JointState.UNTOUCHED);
    }

    @Test
    void aJoint_goesThroughItsStates() {
        assertThat(nuts(Standing.before(promised))).isEqualTo(JointState.UNTOUCHED);
        assertThat(nuts(upTo(Did.BREAK_LOOSE, NUTS))).isEqualTo(JointState.LOOSE);
        assertThat(nuts(upTo(Did.UNDO, NUTS))).isEqualTo(JointState.OUT);
        assertThat(nuts(upTo(Did.START, NUTS))).isEqualTo(JointState.STARTED);
        assertThat(nuts(upTo(Did.RUN_DOWN, NUTS))).isEqualTo(JointState.LOOSE);
        assertThat(nuts(upTo(Did.TIGHTEN, NUTS))).isEqualTo(JointState.FINAL);
        Event look = AnEvent.of(Did.SECOND_LOOK).at(NUTS).by("K", null).event();
        Standing tight = upTo(Did.RUN_DOWN, NUTS)
                .after(AnEvent.of(Did.TIGHTEN).at(NUTS).by("M", null).event());
        assertThat(nuts(tight.after(look))).isEqualTo(JointState.MARKED);
        assertThat(nuts(tight.after(look).after(AnEvent.of(Did.UNDO).at(NUTS).event())))
                .isEqualTo(JointState.OUT);
    }

    @Test
    void aNameWithAStopOrASpaceMore_isNoOtherPerson() {
        Standing tight = upTo(Did.RUN_DOWN, NUTS)
                .after(AnEvent.of(Did.TIGHTEN).at(NUTS).by("Ann", null).event());
        for (String same : new String[] {"Ann.", " ann", "A nn", "ANN!"}) {
            Event look = AnEvent.of(Did.SECOND_LOOK).at(NUTS).by(same, null).event();
            assertThat(nuts(tight.after(look))).as(same).isEqualTo(JointState.FINAL);
        }
        Event other = AnEvent.of(Did.SECOND_LOOK).at(NUTS).by("Anna", null).event();
        assertThat(nuts(tight.after(other))).isEqualTo(JointState.MARKED);
    }

    @Test
    void whileTheWheelIsOff_itSaysSo_andWhatIsOut() {
        Standing standing = upTo(Did.UNDO, "left.strut-to-carrier");
        assertThat(standing.height()).isEqualTo(Height.RAISED);
        assertThat(standing.parts()).containsEntry("left.wheel", PartState.OFF);
        assertThat(standing.fastenersOut()).isGreaterThanOrEqualTo(5);
        assertThat(standing.fastenersReplaced()).isZero();
    }

    @Test
    void whatWasTickedByMistake_isTakenBack_andTheMistakeCanBeTakenBackToo() {
        Event wrong = AnEvent.of(Did.UNDO).at(NUTS).id("7").event();
        Event correct = AnEvent.of(Did.CORRECT).corrects("7").id("8").event();
        Event again = AnEvent.of(Did.CORRECT).corrects("8").id("9").event();
        Standing standing = Standing.before(promised).after(wrong);
        assertThat(nuts(standing)).isEqualTo(JointState.OUT);
        assertThat(nuts(standing.after(correct))).isEqualTo(JointState.UNTOUCHED);
        assertThat(standing.after(correct).events()).hasSize(2);
        assertThat(nuts(standing.after(correct).after(again))).isEqualTo(JointState.OUT);
        assertThat(nuts(Standing.of(promised, List.of(correct, wrong)))).isEqualTo(JointState.OUT);
    }

    @Test
    void aWrench_isPulledOncePerFastenerAndPass_sinceItsCalibration() {
        Instant calibrated = Instant.parse("2026-03-01T00:00:00Z");
        Event before = AnEvent.of(Did.TIGHTEN)
                .at(NUTS)
                .wrench("W1")
                .by("M", calibrated.minusSeconds(1))
                .event();
        Event after = AnEvent.of(Did.TIGHTEN)
                .at(NUTS)
                .wrench("W1")
                .by("M", calibrated)
                .event();
        Standing standing = Standing.of(promised, List.of(before, after));
        assertThat(standing.operations("W1", null)).isEqualTo(2 * standing.operations("W1", calibrated));
        assertThat(standing.operations("W1", calibrated)).isEqualTo(5 * 3);
        assertThat(standing.operations("W2", null)).isZero();
    }

    @Test
    void theNextStep_isTheFirstThatIsLeft_andALookThatWasPassedIsNotAskedForAgain() {
        Standing standing = upTo(Did.UNDO, NUTS);
        assertThat(standing.toDo().get(0).did()).isEqualTo(Did.TAKE_OFF);
        Standing reopened = Standing.of(
                        promised,
                        promised.steps().stream()
                                .map(step -> AnEvent.of(step).event())
                                .toList())
                .after(AnEvent.of(Did.UNDO).at(NUTS).event());
        assertThat(reopened.toDo())
                .filteredOn(step -> NUTS.equals(step.joint()))
                .extracting(PlanStep::did)
                .contains(Did.START, Did.TIGHTEN, Did.SECOND_LOOK);
    }
}

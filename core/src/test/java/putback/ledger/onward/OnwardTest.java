package putback.ledger.onward;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import putback.ledger.AnEvent;
import putback.ledger.Did;
import putback.ledger.Event;
import putback.ledger.PlanPromise;
import putback.ledger.PlanStep;
import putback.plan.Plan;
import putback.plan.Planned;
import putback.plan.Planner;
import putback.plan.steps.ASheet;
import putback.plan.steps.Cars;
import putback.sheet.Assembly;
import putback.sheet.Joint;

class OnwardTest {
    private final Assembly car = Cars.strut();
    private final Plan plan = ((Planned.Sound) Planner.plan(car, ASheet.wanted(car, "left.strut"))).plan();

    private List<Event> upTo(Did did, String id) {
        List<Event> events = new ArrayList<>();
        for (PlanStep step : PlanPromise.of(plan).steps()) {
            events.add(AnEvent.of(step).event());
            if (step.did() == did && (id.equals(step.joint()) || id.equals(step.part()))) {
                return events;
            }
        }
        throw new IllegalArgumentException(id);
    }

    private static String refusal(Onward onward, String joint) {
        return onward.choose(joint) instanceof Choice.Refused no ? no.because() : "";
    }

    @Test
    void whatIsBehindTheWheel_waitsForIt_andIsToldSo() {
        assertThat(refusal(Onward.of(plan, List.of()), "left.strut-to-carrier"))
                .isEqualTo("In the way of strut to carrier, left: the wheel, left.");
        List<Event> events = upTo(Did.TAKE_OFF, "left.wheel");
        assertThat(Onward.of(plan, events).choose("left.strut-to-carrier")).isInstanceOf(Choice.Accepted.class);
    }

    @Test
    void whatThePlanLeavesShut_whatIsUndone_andWhatIsNotThere_areRefused() {
        List<Event> events = upTo(Did.UNDO, "left.wheel-nuts");
        Onward onward = Onward.of(plan, events);
        assertThat(refusal(onward, "right.wheel-nuts")).contains("stays shut in this plan");
        assertThat(refusal(onward, "left.wheel-nuts")).contains("has been undone already");
        assertThat(refusal(onward, "left.nothing")).isEqualTo("There is no fixing left.nothing on this car.");
    }

    @Test
    void whatIsChosen_isUndoneNext_andStaysThereWhenItIsDone() {
        List<Event> events = upTo(Did.TAKE_OFF, "left.wheel");
        Onward onward = Onward.of(plan, events);
        List<Joint> may = onward.mayUndo();
        Joint last = may.get(may.size() - 1);
        Onward chosen = ((Choice.Accepted) onward.choose(last.id())).onward();
        assertThat(chosen.toDo())
                .filteredOn(step -> step.did() == Did.UNDO)
                .first()
                .extracting(PlanStep::joint)
                .isEqualTo(last.id());
        events.add(AnEvent.of(Did.UNDO).at(last.id()).event());
        assertThat(Onward.of(plan, events).plan().moves())
                .isEqualTo(chosen.plan().moves());
    }

    @Test
    void whatWasOpenedBeyondThePlan_helps_butThePlanKeepsItsOrder() {
        List<Event> events = new ArrayList<>(upTo(Did.TAKE_OFF, "left.wheel"));
        events.add(AnEvent.of(Did.UNDO).at("left.caliper-bolts").event());
        Onward onward = Onward.of(plan, events);
        assertThat(onward.plan()).isEqualTo(plan);
        assertThat(onward.mayUndo()).isNotEmpty();
        assertThat(onward.standing().joints()).containsKey("left.caliper-bolts");
    }
}

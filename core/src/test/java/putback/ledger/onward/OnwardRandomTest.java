package putback.ledger.onward;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import putback.ledger.AnEvent;
import putback.ledger.Did;
import putback.ledger.Event;
import putback.ledger.JointState;
import putback.ledger.PlanStep;
import putback.plan.Plan;
import putback.plan.Planned;
import putback.plan.Planner;
import putback.plan.oracle.Reachable;
import putback.plan.oracle.Replayer;
import putback.plan.oracle.SheetGenerator;
import putback.plan.oracle.SheetGenerator.Instance;
import putback.plan.steps.ASheet;
import putback.plan.steps.Cars;
import putback.sheet.Assembly;
import putback.sheet.Joint;

/** A mechanic who takes the joints in any turn that is sound: all that the plan opens is opened, and goes back soundly. */
class OnwardRandomTest {
    private static final Set<Did> LEFT_OUT =
            Set.of(Did.CHECK, Did.LOOK, Did.MARK, Did.CLEAN, Did.PREPARE, Did.RUN_DOWN);

    private final List<Event> events = new ArrayList<>();
    private Random random = new Random(0);
    private int refused;
    private int turned;

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void aStrutCorner_inAnyTurn(long seed) {
        random = new Random(seed);
        Assembly car = Cars.strut();
        for (List<String> wish :
                List.of(List.of("strut"), List.of("disc", "pads"), List.of("arm"), List.of("spring", "hose"))) {
            if (Planner.plan(car, ASheet.wanted(car, wish.toArray(new String[0]))) instanceof Planned.Sound sound) {
                job(sound.plan(), "seed " + seed + ", " + wish);
            }
        }
        assertThat(turned).isPositive();
        assertThat(refused).isPositive();
    }

    @ParameterizedTest
    @ValueSource(longs = {100, 200, 300, 400, 500, 600})
    void randomSheets_inAnyTurn(long from) {
        for (long seed = from; seed < from + 25; seed++) {
            random = new Random(seed);
            Instance instance = SheetGenerator.make(seed, 5 + (int) (seed % 12), seed % 2 == 0);
            if (Planner.plan(instance.assembly(), instance.wanted()) instanceof Planned.Sound sound) {
                job(sound.plan(), instance.toString());
            }
        }
        assertThat(turned).isPositive();
        assertThat(refused).isPositive();
    }

    /** In another turn an aside may turn out not to be needed, which costs a minute and harms nothing. */
    private void job(Plan planned, String name) {
        events.clear();
        Plan plan = planned;
        for (int left = planned.selection().open().size(); left > 0; left--) {
            Onward onward = Onward.of(plan, events);
            assertThat(onward.plan().moves()).as(name).containsExactlyInAnyOrderElementsOf(planned.moves());
            List<Joint> may = onward.mayUndo();
            assertThat(may).as(name).isNotEmpty();
            refusals(onward, may, name);
            Joint chosen = may.get(random.nextInt(may.size()));
            Choice choice = onward.choose(chosen.id());
            assertThat(choice).as(name).isInstanceOf(Choice.Accepted.class);
            Onward next = ((Choice.Accepted) choice).onward();
            turned += next.plan().moves().equals(onward.plan().moves()) ? 0 : 1;
            assertThat(firstUndo(next.toDo())).as(name).isEqualTo(chosen.id());
            assertThat(Replayer.complaints(next.plan()))
                    .as(name)
                    .allMatch(complaint -> complaint.startsWith("nobody needs aside"));
            doAsFarAs(next.toDo(), chosen.id());
            plan = next.plan();
        }
        finish(planned, Onward.of(plan, events), name);
    }

    private void refusals(Onward onward, List<Joint> may, String name) {
        BitSet open = new BitSet();
        onward.standing().joints().forEach((id, state) -> {
            if (state == JointState.OUT) {
                open.set(joint(onward.plan(), id));
            }
        });
        for (int index : onward.plan().selection().open()) {
            Joint joint = onward.plan().assembly().joints().get(index);
            if (open.get(index)) {
                continue;
            }
            boolean reached = Reachable.now(onward.plan(), index, open);
            if (may.contains(joint)) {
                assertThat(reached).as(name + ": " + joint.id()).isTrue();
            } else if (onward.choose(joint.id()) instanceof Choice.Refused no) {
                refused++;
                assertThat(reached)
                        .as(name + ": " + no.because())
                        .isEqualTo(no.because().contains("on its wheels"));
            }
        }
    }

    private static int joint(Plan plan, String id) {
        return plan.assembly().joints().stream()
                .filter(joint -> joint.id().equals(id))
                .findFirst()
                .orElseThrow()
                .index();
    }

    private static String firstUndo(List<PlanStep> steps) {
        return steps.stream()
                .filter(step -> step.did() == Did.UNDO)
                .map(step -> String.valueOf(step.joint()))
                .findFirst()
                .orElse("");
    }

    private void doAsFarAs(List<PlanStep> steps, String joint) {
        for (PlanStep step : steps) {
            done(step);
            if (step.did() == Did.UNDO && joint.equals(step.joint())) {
                return;
            }
        }
    }

    private void done(PlanStep step) {
        if (LEFT_OUT.contains(step.did()) && random.nextInt(3) == 0) {
            return;
        }
        if (step.newFastener() && step.did() == Did.START) {
            events.add(AnEvent.of(Did.REPLACE_FASTENER)
                    .at(String.valueOf(step.joint()))
                    .event());
        }
        String by = step.did() == Did.SECOND_LOOK ? "K" : "M";
        events.add(AnEvent.of(step).by(by, null).event());
    }

    private void finish(Plan planned, Onward onward, String name) {
        Set<String> open = new java.util.TreeSet<>();
        onward.standing().joints().forEach((id, state) -> {
            if (state == JointState.OUT) {
                open.add(id);
            }
        });
        Set<String> wanted = new java.util.TreeSet<>();
        planned.selection()
                .open()
                .forEach(index ->
                        wanted.add(planned.assembly().joints().get(index).id()));
        assertThat(open).as(name).isEqualTo(wanted);
        onward.toDo().forEach(this::done);
        Onward end = Onward.of(onward.plan(), events);
        assertThat(end.standing().owing().owes()).as(name).isEmpty();
        assertThat(end.toDo().stream()
                        .filter(step -> !LEFT_OUT.contains(step.did()))
                        .toList())
                .as(name)
                .isEmpty();
    }
}

package putback.store.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import putback.ledger.onward.Needs;
import putback.plan.Plan;
import putback.plan.Planned;
import putback.plan.Planner;
import putback.plan.access.Accessibility;
import putback.plan.access.Network;
import putback.plan.selection.WantedNames;
import putback.plan.steps.Act;
import putback.plan.steps.Step;
import putback.sheet.Assembly;
import putback.sheet.Side;

/** Whatever is done out of turn as its needs allow, every joint can be reached when its turn comes. */
class NeedsRandomTest {
    private static Plan plan(String sheet, String renew) {
        Assembly assembly = ((Read.Sheet) SheetReader.stock(sheet)).assembly();
        WantedNames.Understood understood =
                WantedNames.understand(assembly, List.of(renew), Set.of(Side.LEFT, Side.RIGHT));
        return ((Planned.Sound) Planner.plan(assembly, ((WantedNames.Understood.Clear) understood).wanted())).plan();
    }

    @ParameterizedTest
    @CsvSource({
        "demo-van,damper",
        "front-strut,strut",
        "front-strut,complete-strut",
        "front-brake,disc",
        "twist-beam,spring"
    })
    void anyOrderThatKeepsToTheNeeds_reachesEveryJoint(String sheet, String renew) {
        Plan plan = plan(sheet, renew);
        Map<Integer, List<Integer>> needs = Needs.of(plan);
        for (long seed = 1; seed <= 60; seed++) {
            replay(plan, shuffled(plan, needs, new Random(seed)), sheet + " " + renew + ", seed " + seed);
        }
    }

    @ParameterizedTest
    @CsvSource({"demo-van,damper", "front-strut,strut"})
    void someStepsAreFree(String sheet, String renew) {
        Plan plan = plan(sheet, renew);
        Map<Integer, List<Integer>> needs = Needs.of(plan);
        int free = 0;
        for (Step step : plan.steps()) {
            free += step.number() > 1
                            && !needs.getOrDefault(step.number(), List.of()).contains(step.number() - 1)
                    ? 1
                    : 0;
        }
        assertThat(free).isGreaterThan(5);
    }

    private static List<Step> shuffled(Plan plan, Map<Integer, List<Integer>> needs, Random random) {
        List<Step> left = new ArrayList<>(plan.steps());
        List<Step> order = new ArrayList<>();
        Set<Integer> done = new HashSet<>();
        while (!left.isEmpty()) {
            List<Step> may = new ArrayList<>();
            for (Step step : left) {
                if (done.containsAll(needs.getOrDefault(step.number(), List.of()))) {
                    may.add(step);
                }
            }
            Step next = may.get(random.nextInt(may.size()));
            left.remove(next);
            done.add(next.number());
            order.add(next);
        }
        return order;
    }

    /** Apart with what is open so far; together each joint closes while everything closed later is still open. */
    private static void replay(Plan plan, List<Step> order, String what) {
        Network network = Network.of(plan.assembly());
        Accessibility access = new Accessibility(network);
        BitSet asides = new BitSet();
        plan.selection().aside().forEach(asides::set);
        BitSet open = new BitSet();
        for (Step step : order) {
            if (step.act() == Act.UNDO && step.joint() != null) {
                assertThat(access.canOpen(step.joint().index(), open, asides))
                        .as(what + ": " + step.text())
                        .isTrue();
                open.set(step.joint().index());
            }
            if (step.act() == Act.START && step.joint() != null) {
                open.clear(step.joint().index());
                assertThat(access.canOpen(step.joint().index(), open, asides))
                        .as(what + ": " + step.text())
                        .isTrue();
            }
        }
    }
}

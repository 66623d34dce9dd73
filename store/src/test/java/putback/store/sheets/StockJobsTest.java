package putback.store.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;
import putback.plan.Plan;
import putback.plan.Planned;
import putback.plan.Planner;
import putback.plan.order.Move;
import putback.plan.selection.WantedNames;
import putback.plan.selection.WantedNames.Understood;
import putback.sheet.Assembly;
import putback.sheet.FollowUp;
import putback.sheet.Part;
import putback.sheet.Side;

/** The stock sheets give the plans that docs/stock-sheets.md says a good mechanic expects. */
class StockJobsTest {
    private static final String EXPECTED = "/putback/store/expected-plans.yaml";

    @TestFactory
    Stream<DynamicTest> aStockJob_opensWhatAMechanicOpens_andNothingElse() throws IOException {
        List<?> jobs;
        try (InputStream stream = StockJobsTest.class.getResourceAsStream(EXPECTED)) {
            assertThat(stream).isNotNull();
            String text = new String(stream.readAllBytes(), StandardCharsets.UTF_8);
            jobs = (List<?>) new Load(LoadSettings.builder().build()).loadFromString(text);
        }
        assertThat(jobs).hasSizeGreaterThan(40);
        return jobs.stream()
                .map(job -> (Map<?, ?>) job)
                .map(job -> DynamicTest.dynamicTest(
                        job.get("sheet") + " " + job.get("renew") + " " + job.get("side"), () -> check(job)));
    }

    private static void check(Map<?, ?> job) {
        Assembly assembly = ((Read.Sheet) SheetReader.open(String.valueOf(job.get("sheet")))).assembly();
        Plan plan = plan(assembly, job);
        Set<String> open = new TreeSet<>();
        for (int joint : plan.selection().open()) {
            open.add(assembly.joints().get(joint).id());
        }
        Set<String> expected = new TreeSet<>();
        Collection<Side> sides = sides(job);
        for (String id : words(job, "open")) {
            expected.addAll(ids(assembly, id, sides));
        }
        Set<Side> others = new TreeSet<>(Set.of(Side.LEFT, Side.RIGHT));
        others.removeAll(sides);
        for (String id : words(job, "open-other")) {
            expected.addAll(ids(assembly, id, others));
        }
        assertThat(open).isEqualTo(expected);
        for (String id : words(job, "stays")) {
            assertThat(open).doesNotContainAnyElementsOf(ids(assembly, id, Set.of(Side.LEFT, Side.RIGHT)));
        }
        assertThat(plan.proof().bound()).isLessThanOrEqualTo(plan.objective());
        assertThat(plan.warnings()).isEmpty();
        checkOrder(job, plan);
        checkFigures(job, plan);
    }

    private static Plan plan(Assembly assembly, Map<?, ?> job) {
        Understood understood = WantedNames.understand(assembly, words(job, "renew"), Set.copyOf(sides(job)));
        assertThat(understood).isInstanceOf(Understood.Clear.class);
        Planned planned = Planner.plan(assembly, ((Understood.Clear) understood).wanted());
        assertThat(planned).isInstanceOf(Planned.Sound.class);
        return ((Planned.Sound) planned).plan();
    }

    private static void checkFigures(Map<?, ?> job, Plan plan) {
        List<String> aside = names(plan, plan.selection().aside());
        List<String> hung = names(plan, plan.selection().hung());
        assertThat(aside).containsExactlyInAnyOrderElementsOf(onSides(plan.assembly(), job, "aside"));
        assertThat(hung).containsExactlyInAnyOrderElementsOf(onSides(plan.assembly(), job, "hung"));
        assertThat(plan.selection().followUps().stream().map(FollowUp::id))
                .containsExactlyInAnyOrderElementsOf(words(job, "follow-ups"));
    }

    private static List<String> names(Plan plan, List<Integer> parts) {
        return parts.stream()
                .map(part -> plan.assembly().parts().get(part).id())
                .toList();
    }

    private static Set<String> onSides(Assembly assembly, Map<?, ?> job, String key) {
        Set<String> found = new TreeSet<>();
        for (String id : words(job, key)) {
            for (Part part : assembly.parts()) {
                if (part.entry().id().equals(id)
                                && (part.side() == Side.NONE || sides(job).contains(part.side()))
                        || part.id().equals(id)) {
                    found.add(part.id());
                }
            }
        }
        return found;
    }

    private static void checkOrder(Map<?, ?> job, Plan plan) {
        List<String> undone = new ArrayList<>();
        for (Move move : plan.moves()) {
            if (move instanceof Move.Open open) {
                undone.add(plan.assembly().joints().get(open.joint()).id());
            }
        }
        Object pairs = job.get("order");
        for (Object pair : pairs == null ? List.of() : (List<?>) pairs) {
            String first = String.valueOf(((List<?>) pair).get(0));
            String then = String.valueOf(((List<?>) pair).get(1));
            for (Side side : sides(job)) {
                int at = at(undone, first, side);
                assertThat(at).as(first).isBetween(0, at(undone, then, side));
            }
        }
    }

    private static int at(List<String> undone, String id, Side side) {
        return Math.max(undone.indexOf(id), undone.indexOf(side.prefix() + id));
    }

    private static Collection<Side> sides(Map<?, ?> job) {
        String side = String.valueOf(job.get("side"));
        return side.equals("both")
                ? List.of(Side.LEFT, Side.RIGHT)
                : List.of(side.equals("left") ? Side.LEFT : Side.RIGHT);
    }

    private static Set<String> ids(Assembly assembly, String id, Collection<Side> sides) {
        Set<String> found = new TreeSet<>();
        assembly.joints().stream()
                .filter(joint -> joint.id().equals(id) || joint.entry().id().equals(id) && sides.contains(joint.side()))
                .forEach(joint -> found.add(joint.id()));
        assertThat(found).as("joints called " + id).isNotEmpty();
        return found;
    }

    private static List<String> words(Map<?, ?> job, String key) {
        Object value = job.get(key);
        return value == null
                ? List.of()
                : ((List<?>) value).stream().map(String::valueOf).toList();
    }
}

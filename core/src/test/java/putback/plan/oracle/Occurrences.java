package putback.plan.oracle;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Stream;
import putback.plan.oracle.SheetGenerator.Instance;
import putback.plan.selection.Target;
import putback.sheet.Joint;
import putback.sheet.JointEntry;
import putback.sheet.Letting;
import putback.sheet.Part;
import putback.sheet.Station;
import putback.sheet.Where;

/** Counts in how many assemblies each rule occurs. */
final class Occurrences {
    private static final Map<String, Predicate<Joint>> OF_JOINTS = Map.ofEntries(
            Map.entry("three parts in a joint", joint -> joint.joins().size() > 2),
            Map.entry("a blocker", joint -> joint.behind().stream().anyMatch(clause -> clause.size() == 1)),
            Map.entry(
                    "blockers to choose from", joint -> joint.behind().stream().anyMatch(clause -> clause.size() > 1)),
            Map.entry("several clauses", joint -> joint.behind().size() > 1),
            Map.entry("after", joint -> !joint.after().isEmpty()),
            Map.entry("ahead of", joint -> !joint.aheadOf().isEmpty()),
            Map.entry("bench", joint -> joint.entry().station() == Station.BENCH),
            Map.entry("spoils", joint -> !joint.spoils().isEmpty()),
            Map.entry("brings a follow-up", joint -> !joint.entry().brings().isEmpty()),
            Map.entry("zero minutes", joint -> joint.entry().open().isZero()),
            Map.entry("pivot", joint -> joint.entry().pivot()),
            Map.entry("lets go", joint -> !joint.letsGo().isEmpty()),
            Map.entry("let down", joint -> joint.letsGo().stream().anyMatch(Letting::letDown)),
            Map.entry("broken loose on wheels", joint -> joint.entry().breakLooseOnWheels()),
            Map.entry("broken loose while held", joint -> !joint.loosenBefore().isEmpty()),
            Map.entry(
                    "tightened after a follow-up",
                    joint -> !joint.entry().timing().tightenAfter().isEmpty()),
            Map.entry("one side only", joint -> joint.entry().where() == Where.LEFT),
            Map.entry("other side named", joint -> written(joint.entry()).anyMatch(id -> id.startsWith("other."))));

    private final Map<String, Integer> counts = new TreeMap<>();

    void add(Instance instance) {
        for (Map.Entry<String, Predicate<Joint>> rule : OF_JOINTS.entrySet()) {
            count(rule.getKey(), instance.assembly().joints().stream().anyMatch(rule.getValue()));
        }
        List<Part> parts = instance.assembly().parts();
        List<Target> targets = instance.wanted().targets();
        count("tether", parts.stream().anyMatch(Part::isTether));
        count("aside", parts.stream().anyMatch(Part::canGoAside));
        count("sides", instance.assembly().sided());
        count("unit wanted", targets.stream().anyMatch(Target.OfUnit.class::isInstance));
        count("several wanted", targets.size() > 1);
    }

    void count(String what, boolean occurs) {
        counts.merge(what, occurs ? 1 : 0, Integer::sum);
    }

    Map<String, Integer> counts() {
        return counts;
    }

    private static Stream<String> written(JointEntry entry) {
        Stream<String> blockers = entry.behind().clauses().stream().flatMap(List::stream);
        return Stream.of(blockers, entry.after().stream(), entry.aheadOf().stream())
                .flatMap(ids -> ids);
    }
}

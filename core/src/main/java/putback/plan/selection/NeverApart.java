package putback.plan.selection;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import putback.plan.access.Network;
import putback.sheet.Assembly;
import putback.sheet.Joint;
import putback.sheet.Part;
import putback.sheet.Unit;

/**
 * What of a sheet can never come off, whatever else is opened, and fixings that no job can open together. Each part and
 * unit is tried by itself, as if it alone were renewed.
 */
public final class NeverApart {
    private static final int NAMED = 8;

    private final Assembly assembly;
    private final Network network;
    private final BitSet stuck;
    /** Joints that have to come before another where both are opened. */
    private final BitSet ahead = new BitSet();
    /** Joints that lock each other, with the ids of all that they bar, and why. */
    private final Map<String, Set<String>> barred = new LinkedHashMap<>();

    private final Map<String, String> reasons = new LinkedHashMap<>();

    private NeverApart(Assembly assembly) {
        this.assembly = assembly;
        this.network = Network.of(assembly);
        this.stuck = Deadlock.alwaysStuck(network);
        for (Joint joint : assembly.joints()) {
            joint.aheadOf().forEach(ahead::set);
        }
    }

    /** Sentences for a person, none where all of it comes apart; what is the same on both sides is said once. */
    public static List<String> of(Assembly assembly) {
        return new NeverApart(assembly).sentences();
    }

    private List<String> sentences() {
        for (Part part : assembly.parts()) {
            if (!part.isBody()) {
                attempt(new Target.OfPart(part), part.entry().id());
            }
        }
        for (Unit unit : assembly.units()) {
            attempt(new Target.OfUnit(unit), unit.id().substring(unit.id().indexOf('.') + 1));
        }
        List<String> sentences = new ArrayList<>();
        barred.forEach((joints, ids) -> sentences.add(named(ids) + ": " + reasons.get(joints)));
        sentences.addAll(rings());
        return sentences;
    }

    private void attempt(Target target, String id) {
        Demand demand = Demand.of(network, new Wanted(List.of(target)));
        if (!stuck.intersects(demand.required()) && (isFree(demand) || Deadlock.leavesOpen(demand))) {
            return;
        }
        BitSet shut = demand.required();
        shut.and(stuck);
        Deadlock lock = shut.isEmpty() || !Deadlock.isTooManyToShrink(stuck)
                ? Deadlock.in(demand)
                : Deadlock.around(network, stuck, shut.nextSetBit(0));
        String alike = plain(lock.joints());
        barred.computeIfAbsent(alike, joints -> new LinkedHashSet<>()).add(id);
        reasons.putIfAbsent(alike, shortly(lock.reasons()));
    }

    /** Whether no order and no unit can bar it. */
    private boolean isFree(Demand demand) {
        return demand.forbidden().isEmpty() && ahead.isEmpty();
    }

    private static String shortly(List<String> reasons) {
        int more = reasons.size() - NAMED;
        return String.join("; ", reasons.subList(0, Math.min(NAMED, reasons.size())))
                + (more > 0 ? "; and so on, " + more + " more" : "");
    }

    /** Ids without their side: what locks on the left locks on the right. */
    private String plain(List<Integer> joints) {
        Set<String> ids = new TreeSet<>();
        for (int joint : joints) {
            ids.add(assembly.joints().get(joint).entry().id());
        }
        return String.join(",", ids);
    }

    private static String named(Set<String> ids) {
        List<String> first = ids.stream().limit(NAMED).toList();
        int more = ids.size() - first.size();
        return String.join(", ", first) + (more > 0 ? " and " + more + " more" : "");
    }

    /** Joints of which each comes ahead of the next, and the last ahead of the first. */
    private List<String> rings() {
        Map<String, String> rings = new LinkedHashMap<>();
        int[] seen = new int[assembly.joints().size()];
        for (Joint joint : assembly.joints()) {
            walk(joint.index(), seen, new ArrayList<>(), rings);
        }
        return List.copyOf(rings.values());
    }

    /**
     * @param seen 0 for what was not walked yet, 1 for what is on the path, 2 for what is done
     */
    private void walk(int joint, int[] seen, List<Integer> path, Map<String, String> rings) {
        if (seen[joint] == 1) {
            List<Integer> ring = path.subList(path.indexOf(joint), path.size());
            rings.putIfAbsent(plain(ring), told(ring));
            return;
        }
        if (seen[joint] == 2) {
            return;
        }
        seen[joint] = 1;
        path.add(joint);
        for (int next : assembly.joints().get(joint).aheadOf()) {
            walk(next, seen, path, rings);
        }
        path.remove(path.size() - 1);
        seen[joint] = 2;
    }

    private String told(List<Integer> ring) {
        StringBuilder told = new StringBuilder("in one job: ");
        for (int joint : ring) {
            told.append(assembly.joints().get(joint).name()).append(" ahead of ");
        }
        return told + assembly.joints().get(ring.get(0)).name()
                + ", so no job can open all of them; take one ahead-of out";
    }
}

package putback.plan.selection;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.TreeSet;
import putback.plan.access.Accessibility;
import putback.plan.access.Network;
import putback.plan.access.Ties;

/**
 * Joints that lock each other: none of them can be opened, whatever else is.
 *
 * @param joints indices, rising
 * @param parts indices of the parts in their way, rising
 * @param reasons one sentence for each joint, in the same order
 */
public record Deadlock(List<Integer> joints, List<Integer> parts, List<String> reasons) {
    public Deadlock {
        joints = List.copyOf(joints);
        parts = List.copyOf(parts);
        reasons = List.copyOf(reasons);
    }

    /** A smallest deadlock that keeps the demand from being met. */
    public static Deadlock in(Demand demand) {
        return new Finder(demand).find();
    }

    /** Frees one joint after the other and keeps those without which the rest would open. */
    private static final class Finder {
        private final Demand demand;
        private final Network network;
        private final BitSet all = new BitSet();
        private final BitSet planned;

        Finder(Demand demand) {
            this.demand = demand;
            this.network = demand.network();
            this.planned = demand.required();
            all.set(0, network.joints());
        }

        Deadlock find() {
            BitSet stuck = (BitSet) all.clone();
            stuck.andNot(openable(new BitSet()));
            BitSet wantedStuck = (BitSet) stuck.clone();
            wantedStuck.and(planned);
            if (wantedStuck.isEmpty()) {
                return describe(withOrder());
            }
            BitSet best = stuck;
            for (int first = stuck.nextSetBit(0); first >= 0; first = stuck.nextSetBit(first + 1)) {
                BitSet lock = shrink(stuck, first);
                if (lock.cardinality() < best.cardinality()) {
                    best = lock;
                }
            }
            return describe(best);
        }

        /** Required joints of which each has to come ahead of another, or is ruined for another's sake. */
        private BitSet withOrder() {
            BitSet lock = new BitSet();
            for (int joint = planned.nextSetBit(0); joint >= 0; joint = planned.nextSetBit(joint + 1)) {
                for (int ahead : network.opensBehind(joint)) {
                    if (planned.get(ahead)) {
                        lock.set(joint);
                        lock.set(ahead);
                    }
                }
            }
            return lock.isEmpty() ? planned : lock;
        }

        /** The smaller deadlock left when joints other than {@code kept} are taken as open, one after the other. */
        private BitSet shrink(BitSet stuck, int kept) {
            BitSet lock = (BitSet) stuck.clone();
            for (int joint = stuck.nextSetBit(0); joint >= 0; joint = stuck.nextSetBit(joint + 1)) {
                if (joint == kept || !lock.get(joint)) {
                    continue;
                }
                BitSet freed = (BitSet) all.clone();
                freed.andNot(lock);
                freed.set(joint);
                BitSet smaller = (BitSet) all.clone();
                smaller.andNot(openable(freed));
                if (smaller.get(kept)) {
                    lock = smaller;
                }
            }
            return lock;
        }

        private BitSet openable(BitSet freed) {
            BitSet open = (BitSet) freed.clone();
            Ties ties = new Ties(network);
            BitSet forbidden = demand.forbidden();
            boolean moved = true;
            while (moved) {
                moved = false;
                ties.rebuild(open);
                for (int joint = 0; joint < network.joints(); joint++) {
                    if (!open.get(joint)
                            && !forbidden.get(joint)
                            && Accessibility.inOrder(network, joint, open, planned)
                            && Accessibility.canOpen(network, ties, joint, open, network.asides())) {
                        open.set(joint);
                        moved = true;
                    }
                }
            }
            return open;
        }

        private Deadlock describe(BitSet lock) {
            BitSet open = (BitSet) all.clone();
            open.andNot(lock);
            Ties ties = new Ties(network);
            ties.rebuild(open);
            TreeSet<Integer> parts = new TreeSet<>();
            List<String> reasons = new ArrayList<>();
            for (int joint : lock.stream().toArray()) {
                reasons.add(reason(joint, open, ties, parts));
            }
            return new Deadlock(lock.stream().boxed().toList(), List.copyOf(parts), reasons);
        }

        private String reason(int joint, BitSet open, Ties ties, TreeSet<Integer> parts) {
            String name = name(joint);
            if (demand.forbidden().get(joint)) {
                return name + " stays closed, because it is inside what is renewed in one piece";
            }
            for (int before : network.after(joint)) {
                if (!open.get(before)) {
                    return name + " comes only after " + name(before);
                }
            }
            for (int[] clause : network.clauses(joint)) {
                List<String> inTheWay = inTheWay(joint, clause, open, ties, parts);
                if (inTheWay.size() == clause.length) {
                    return name + " has " + String.join(" and ", inTheWay) + " in its way";
                }
            }
            for (int ahead : network.opensBehind(joint)) {
                if (planned.get(ahead) && !open.get(ahead)) {
                    return name + " comes only after " + name(ahead) + " when both are opened";
                }
            }
            return network.isBench(joint)
                    ? name + " is opened on the bench, and its parts do not come off the car"
                    : name + " cannot be opened together with the others";
        }

        private List<String> inTheWay(int joint, int[] clause, BitSet open, Ties ties, TreeSet<Integer> parts) {
            List<String> names = new ArrayList<>();
            for (int part : clause) {
                if (!ties.separated(part, joint) && !Accessibility.isAside(network, part, open, network.asides())) {
                    names.add(network.assembly().parts().get(part).name());
                    parts.add(part);
                }
            }
            if (names.size() < clause.length) {
                return List.of();
            }
            return names;
        }

        private String name(int joint) {
            return network.assembly().joints().get(joint).name();
        }
    }
}

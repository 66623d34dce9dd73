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
    /** Of more stuck joints a smallest deadlock takes too long to find; one ring of them is told. */
    private static final int MOST_SHRUNK = 60;

    public Deadlock {
        joints = List.copyOf(joints);
        parts = List.copyOf(parts);
        reasons = List.copyOf(reasons);
    }

    /** A smallest deadlock that keeps the demand from being met. */
    public static Deadlock in(Demand demand) {
        return new Finder(demand).find();
    }

    /**
     * What keeps one joint shut: a smallest deadlock takes too long to find among many, and a ring of them says as much.
     *
     * @param stuck all that stay shut whatever is opened
     */
    static Deadlock around(Network network, BitSet stuck, int joint) {
        Finder finder = new Finder(network, new BitSet(), new BitSet());
        return finder.describe(finder.ring(stuck, joint), stuck);
    }

    static boolean isTooManyToShrink(BitSet stuck) {
        return stuck.cardinality() > MOST_SHRUNK;
    }

    /** Joints that stay shut whatever is opened, without any job: none of those comes into a plan. */
    static BitSet alwaysStuck(Network network) {
        Finder finder = new Finder(network, new BitSet(), new BitSet());
        BitSet stuck = (BitSet) finder.all.clone();
        stuck.andNot(finder.openable(new BitSet()));
        return stuck;
    }

    /** Whether what this demand asks for opens, were everything else to be opened for it. */
    static boolean leavesOpen(Demand demand) {
        BitSet shut = demand.required();
        shut.andNot(new Finder(demand).openable(new BitSet()));
        return shut.isEmpty();
    }

    /** Frees one joint after the other and keeps those without which the rest would open. */
    private static final class Finder {
        private final BitSet forbidden;
        private final Network network;
        private final BitSet all = new BitSet();
        private final BitSet planned;

        Finder(Demand demand) {
            this(demand.network(), demand.forbidden(), demand.required());
        }

        Finder(Network network, BitSet forbidden, BitSet planned) {
            this.network = network;
            this.forbidden = forbidden;
            this.planned = planned;
            all.set(0, network.joints());
        }

        Deadlock find() {
            BitSet stuck = (BitSet) all.clone();
            stuck.andNot(openable(new BitSet()));
            BitSet wantedStuck = (BitSet) stuck.clone();
            wantedStuck.and(planned);
            if (wantedStuck.isEmpty()) {
                return describe(withOrder(), withOrder());
            }
            if (stuck.cardinality() > MOST_SHRUNK) {
                return describe(ring(stuck, wantedStuck.nextSetBit(0)), stuck);
            }
            BitSet best = shrink(stuck, wantedStuck.nextSetBit(0));
            BitSet near = best;
            for (int first = near.nextSetBit(0); first >= 0; first = near.nextSetBit(first + 1)) {
                BitSet lock = shrink(near, first);
                if (lock.cardinality() < best.cardinality()) {
                    best = lock;
                }
            }
            return describe(best, best);
        }

        /** From one stuck joint on to one that it waits for, until they come round again. */
        private BitSet ring(BitSet stuck, int start) {
            BitSet open = (BitSet) all.clone();
            open.andNot(stuck);
            Ties ties = new Ties(network);
            ties.rebuild(open);
            List<Integer> path = new ArrayList<>();
            int joint = start;
            while (joint >= 0 && !path.contains(joint)) {
                path.add(joint);
                joint = waitsFor(joint, stuck, open, ties);
            }
            BitSet ring = new BitSet();
            for (int other : path.subList(Math.max(0, path.indexOf(joint)), path.size())) {
                ring.set(other);
            }
            return ring;
        }

        /** A stuck joint that keeps this one shut; -1 where it is shut for another reason. */
        private int waitsFor(int joint, BitSet stuck, BitSet open, Ties ties) {
            for (int before : network.after(joint)) {
                if (stuck.get(before)) {
                    return before;
                }
            }
            for (int[] clause : network.clauses(joint)) {
                for (int part : inTheWay(joint, clause, open, ties)) {
                    for (int holding : network.jointsOf(part)) {
                        if (stuck.get(holding) && holding != joint) {
                            return holding;
                        }
                    }
                }
            }
            return -1;
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

        private Deadlock describe(BitSet lock, BitSet shut) {
            BitSet open = (BitSet) all.clone();
            open.andNot(shut);
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
            if (forbidden.get(joint)) {
                return name + " stays closed, because it is inside what is renewed in one piece";
            }
            for (int before : network.after(joint)) {
                if (!open.get(before)) {
                    return name + " comes only after " + name(before);
                }
            }
            for (int[] clause : network.clauses(joint)) {
                List<String> inTheWay = new ArrayList<>();
                for (int part : inTheWay(joint, clause, open, ties)) {
                    inTheWay.add(network.assembly().parts().get(part).name());
                    parts.add(part);
                }
                if (!inTheWay.isEmpty()) {
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

        /** The parts of a clause that is not met; none where one of them is clear. */
        private List<Integer> inTheWay(int joint, int[] clause, BitSet open, Ties ties) {
            List<Integer> all = new ArrayList<>();
            for (int part : clause) {
                if (ties.separated(part, joint) || Accessibility.isAside(network, part, open, network.asides())) {
                    return List.of();
                }
                all.add(part);
            }
            return all;
        }

        private String name(int joint) {
            return network.assembly().joints().get(joint).name();
        }
    }
}

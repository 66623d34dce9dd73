package putback.plan.steps;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.function.Predicate;
import putback.plan.access.Accessibility;
import putback.plan.access.Network;
import putback.plan.access.Ties;
import putback.sheet.Joint;

/** Asks what can be reached, and finds the fewest open joints that let it be. */
final class Reach {
    private final Network network;
    private final Ties ties;

    Reach(Network network) {
        this.network = network;
        this.ties = new Ties(network);
    }

    /** Whether a joint can be opened or closed while the given ones are open, whatever comes ahead of what. */
    boolean canOpen(int joint, BitSet open, BitSet asides) {
        ties.rebuild(open);
        return Accessibility.canOpen(network, ties, joint, open, asides);
    }

    /**
     * Whether these clauses are met, the joints that come before are open (but for those that it turns beside), and a
     * bench joint is on the bench.
     */
    boolean canTurn(Joint joint, List<List<Integer>> clauses, BitSet open, BitSet asides) {
        ties.rebuild(open);
        return isOpen(joint.after(), joint.loosenBefore(), open)
                && inTheWay(joint, clauses, open, asides).isEmpty()
                && (!network.isBench(joint.index()) || ties.allOff(joint.index()));
    }

    private static boolean isOpen(List<Integer> joints, List<Integer> mayBeShut, BitSet open) {
        for (int joint : joints) {
            if (!open.get(joint) && !mayBeShut.contains(joint)) {
                return false;
            }
        }
        return true;
    }

    /** Whether nothing that these clauses name is in the way. */
    boolean isClear(Joint joint, List<List<Integer>> clauses, BitSet open, BitSet asides) {
        ties.rebuild(open);
        return inTheWay(joint, clauses, open, asides).isEmpty();
    }

    /** One part of each clause that is not met. */
    List<Integer> blockers(Joint joint, List<List<Integer>> clauses, BitSet open, BitSet asides) {
        ties.rebuild(open);
        return inTheWay(joint, clauses, open, asides);
    }

    private List<Integer> inTheWay(Joint joint, List<List<Integer>> clauses, BitSet open, BitSet asides) {
        List<Integer> blockers = new ArrayList<>();
        for (List<Integer> clause : clauses) {
            if (!isMet(joint, clause, open, asides)) {
                blockers.addAll(clause.subList(0, Math.min(1, clause.size())));
            }
        }
        return blockers;
    }

    private boolean isMet(Joint joint, List<Integer> clause, BitSet open, BitSet asides) {
        for (int part : clause) {
            if (Accessibility.isAside(network, part, open, asides) || ties.separated(part, joint.index())) {
                return true;
            }
        }
        return false;
    }

    /**
     * Joints of which none can be left out. Those opened last are left out first, so that what remains is closed late
     * on the way back anyway.
     *
     * @param before joints in the order they are opened
     * @param enough holds for more open joints if it holds for fewer; holds for all of {@code before}
     */
    static BitSet fewest(List<Integer> before, Predicate<BitSet> enough) {
        BitSet kept = new BitSet();
        for (int one : before) {
            kept.set(one);
        }
        for (int i = before.size() - 1; i >= 0; i--) {
            kept.clear(before.get(i));
            if (!enough.test(kept)) {
                kept.set(before.get(i));
            }
        }
        return kept;
    }
}

package putback.plan.access;

import java.util.BitSet;

/** Whether a joint can be opened now. What is accessible stays so when more is opened. */
public final class Accessibility {
    private final Network network;
    private final Ties ties;

    public Accessibility(Network network) {
        this.network = network;
        this.ties = new Ties(network);
    }

    /**
     * Whether the joint can be reached and opened while others are open; {@code ahead-of} is not looked at.
     *
     * @param asides parts that may be moved aside as soon as the joints that this needs are open
     */
    public boolean canOpen(int joint, BitSet open, BitSet asides) {
        ties.rebuild(open);
        return canOpen(network, ties, joint, open, asides);
    }

    /** The same with ties that stand for the open joints. */
    public static boolean canOpen(Network network, Ties ties, int joint, BitSet open, BitSet asides) {
        for (int before : network.afterOf(joint)) {
            if (!open.get(before)) {
                return false;
            }
        }
        for (int[] clause : network.clausesOf(joint)) {
            if (!oneClear(network, ties, joint, clause, open, asides)) {
                return false;
            }
        }
        return !network.isBench(joint) || ties.allOff(joint);
    }

    private static boolean oneClear(Network network, Ties ties, int joint, int[] clause, BitSet open, BitSet asides) {
        for (int part : clause) {
            if (isAside(network, part, open, asides) || ties.separated(part, joint)) {
                return true;
            }
        }
        return false;
    }

    /** Whether the part may be aside and the joints that this needs are open. */
    public static boolean isAside(Network network, int part, BitSet open, BitSet asides) {
        if (!asides.get(part)) {
            return false;
        }
        for (int joint : network.asideOpensOf(part)) {
            if (!open.get(joint)) {
                return false;
            }
        }
        return true;
    }

    /** Whether every joint of the plan that comes ahead of this one is open. */
    public static boolean inOrder(Network network, int joint, BitSet open, BitSet planned) {
        for (int ahead : network.opensBehindOf(joint)) {
            if (planned.get(ahead) && !open.get(ahead)) {
                return false;
            }
        }
        return true;
    }
}

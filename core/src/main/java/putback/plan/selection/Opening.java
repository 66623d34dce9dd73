package putback.plan.selection;

import java.util.BitSet;
import putback.plan.access.Accessibility;
import putback.plan.access.Network;
import putback.plan.access.Ties;

/** Opens greedily whatever a set of items allows. What can be opened only grows with the items. */
final class Opening {
    private static final BitSet NEVER = new BitSet();

    /** Numbers looked at to see whether a joint opens, about. */
    private static final int COST_OF_TRYING = 40;

    private final Network network;
    private final Items items;
    private final BitSet forbidden;
    private final Ties ties;
    private final Effort effort;

    /**
     * @param effort is told how often joints are tried
     */
    Opening(Demand demand, Items items, Effort effort) {
        this.effort = effort;
        this.network = demand.network();
        this.items = items;
        this.forbidden = demand.forbidden();
        this.ties = new Ties(network);
    }

    /**
     * The joints that can be opened with the items, on top of those already open.
     *
     * @param already joints opened with fewer items
     * @param planned joints that have to come ahead of others because they are opened for certain
     */
    BitSet opened(BitSet allowed, BitSet already, BitSet planned) {
        return openedUntil(NEVER, allowed, already, planned);
    }

    /** The same, but it may stop as soon as the goal is open. */
    BitSet openedUntil(BitSet goal, BitSet allowed, BitSet already, BitSet planned) {
        BitSet open = (BitSet) already.clone();
        BitSet asides = items.asides(allowed);
        BitSet handled = items.handled(allowed);
        BitSet waiting = allowed.get(0, items.joints);
        waiting.andNot(open);
        waiting.andNot(forbidden);
        boolean moved = true;
        while (moved && (goal.isEmpty() || !Landmarks.contains(open, goal))) {
            moved = false;
            ties.rebuild(open, handled);
            effort.spend(items.joints + (long) COST_OF_TRYING * waiting.cardinality());
            for (int joint = waiting.nextSetBit(0); joint >= 0; joint = waiting.nextSetBit(joint + 1)) {
                if (canOpen(joint, allowed, open, asides, planned)) {
                    open.set(joint);
                    waiting.clear(joint);
                    moved = true;
                }
            }
        }
        return open;
    }

    private boolean canOpen(int joint, BitSet allowed, BitSet open, BitSet asides, BitSet planned) {
        return items.paid(joint, allowed)
                && Accessibility.inOrder(network, joint, open, planned)
                && Accessibility.canOpen(network, ties, joint, open, asides);
    }
}

package putback.plan.order;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import putback.plan.access.Accessibility;
import putback.plan.access.Network;
import putback.plan.access.Ties;

/** Opens joints in a given order and moves parts aside only where that is needed. */
final class Replay {
    private final Network network;
    private final BitSet asides;
    private final Ties ties;
    private final BitSet open = new BitSet();
    private final BitSet used = new BitSet();
    private final List<Move> moves = new ArrayList<>();

    /**
     * @param asides parts that may be moved aside
     */
    Replay(Network network, BitSet asides) {
        this.network = network;
        this.asides = asides;
        this.ties = new Ties(network);
    }

    /** The moves, each part moved aside just before the first joint that it blocks. */
    List<Move> moves(List<Integer> joints) {
        for (int joint : joints) {
            ties.rebuild(open);
            for (int[] clause : network.clauses(joint)) {
                clear(joint, clause);
            }
            moves.add(new Move.Open(joint));
            open.set(joint);
        }
        return moves;
    }

    private void clear(int joint, int[] clause) {
        int candidate = -1;
        for (int part : clause) {
            if (ties.separated(part, joint) || used.get(part)) {
                return;
            }
            if (candidate < 0 && Accessibility.isAside(network, part, open, asides)) {
                candidate = part;
            }
        }
        if (candidate >= 0) {
            used.set(candidate);
            moves.add(new Move.MoveAside(candidate));
        }
    }

    /** Parts moved aside so far. */
    BitSet used() {
        return (BitSet) used.clone();
    }
}

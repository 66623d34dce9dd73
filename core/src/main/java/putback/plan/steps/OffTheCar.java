package putback.plan.steps;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import putback.plan.access.Ties;
import putback.plan.order.Move;

/** What came apart after it was off the car goes together there, before any of it is offered up. */
final class OffTheCar {
    private final Job job;
    private final ClosingOrder closing;
    private final TaskGraph graph;
    private final BitSet open = new BitSet();
    private final List<Left> left = new ArrayList<>();

    OffTheCar(Job job, ClosingOrder closing) {
        this.job = job;
        this.closing = closing;
        this.graph = closing.graph();
    }

    /**
     * A joint that came open while a part of it stayed on the car.
     *
     * @param stayed the parts of it that did
     */
    private record Left(int joint, BitSet stayed) {}

    void add() {
        Ties ties = job.ties(open);
        for (Move move : job.moves) {
            if (move instanceof Move.Open one) {
                if (ties.allOff(one.joint())) {
                    orderAhead(one.joint(), ties);
                }
                open.set(one.joint());
                ties.rebuild(open);
                left.add(new Left(one.joint(), stayed(one.joint(), ties)));
            }
        }
    }

    private BitSet stayed(int joint, Ties ties) {
        BitSet stayed = new BitSet();
        for (int part : job.network.joins(joint)) {
            stayed.set(part, !ties.off(part));
        }
        return stayed;
    }

    private void orderAhead(int joint, Ties ties) {
        int together = closing.secured(joint);
        BitSet ahead = graph.ancestors(together);
        for (Left earlier : left) {
            int start = closing.start(earlier.joint);
            if (hungOn(earlier, joint, ties) && !ahead.get(start)) {
                graph.order(together, start);
            }
        }
    }

    /** Whether the earlier one held the piece, of which the joint is a part, to what stayed on the car. */
    private boolean hungOn(Left earlier, int joint, Ties ties) {
        int first = job.network.joins(joint)[0];
        boolean inPiece = false;
        boolean outside = false;
        for (int part : job.network.joins(earlier.joint)) {
            boolean own = ties.tied(part, first);
            inPiece |= own;
            outside |= !own && earlier.stayed.get(part);
        }
        return inPiece && outside;
    }
}

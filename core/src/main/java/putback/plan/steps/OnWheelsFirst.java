package putback.plan.steps;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import putback.plan.access.Accessibility;
import putback.plan.access.Network;
import putback.plan.order.Move;
import putback.plan.selection.Selection;
import putback.sheet.Assembly;
import putback.sheet.Height;
import putback.sheet.Joint;

/**
 * What is opened before the car is raised: what comes first anyway, and what is in the way of a fastener that is broken
 * loose on wheels.
 *
 * @param moves all moves, those on wheels first
 * @param early how many of them
 */
record OnWheelsFirst(List<Move> moves, int early) {
    static OnWheelsFirst of(Assembly assembly, Network network, Selection selection, List<Move> moves) {
        return new Sorting(assembly, network, selection, moves).sort();
    }

    private static final class Sorting {
        private final Assembly assembly;
        private final Network network;
        private final Reach reach;
        private final BitSet planned = new BitSet();
        private final BitSet asides = new BitSet();
        private final List<Move> early = new ArrayList<>();
        private final List<Move> late = new ArrayList<>();

        Sorting(Assembly assembly, Network network, Selection selection, List<Move> moves) {
            this.assembly = assembly;
            this.network = network;
            this.reach = new Reach(network);
            selection.open().forEach(planned::set);
            selection.aside().forEach(asides::set);
            boolean raised = false;
            for (Move move : moves) {
                raised |= move instanceof Move.Open open && height(open.joint()) == Height.RAISED;
                (raised ? late : early).add(move);
            }
        }

        private Height height(int joint) {
            return Job.heightOf(assembly.joints().get(joint));
        }

        OnWheelsFirst sort() {
            for (Joint joint : assembly.joints()) {
                boolean loosened = planned.get(joint.index()) && joint.entry().breakLooseOnWheels();
                if (loosened && !isReached(joint, early)) {
                    pull(joint);
                }
            }
            List<Move> all = new ArrayList<>(early);
            all.addAll(late);
            return new OnWheelsFirst(all, early.size());
        }

        private boolean isReached(Joint joint, List<Move> done) {
            return reach.isClear(joint, joint.reachOnWheels(), open(done), movedAside(done));
        }

        /** Brings forward what may be opened on wheels, then leaves out again what this joint does not need. */
        private void pull(Joint joint) {
            List<Move> pulled = new ArrayList<>();
            boolean moved = true;
            while (moved) {
                moved = false;
                for (Move move : late) {
                    if (!pulled.contains(move) && canPull(move, joint, pulled)) {
                        pulled.add(move);
                        moved = true;
                    }
                }
            }
            if (!isReached(joint, with(pulled))) {
                return;
            }
            for (int i = pulled.size() - 1; i >= 0; i--) {
                List<Move> fewer = new ArrayList<>(pulled);
                fewer.remove(i);
                if (isReached(joint, with(fewer)) && isSound(fewer, joint)) {
                    pulled.remove(i);
                }
            }
            early.addAll(pulled);
            late.removeAll(pulled);
        }

        private boolean isSound(List<Move> sequence, Joint joint) {
            List<Move> done = new ArrayList<>();
            for (Move move : sequence) {
                if (!canPull(move, joint, done)) {
                    return false;
                }
                done.add(move);
            }
            return true;
        }

        private boolean canPull(Move move, Joint joint, List<Move> pulled) {
            BitSet open = open(with(pulled));
            if (move instanceof Move.MoveAside aside) {
                return assembly.parts().get(aside.part()).asideOpens().stream().allMatch(open::get);
            }
            int index = ((Move.Open) move).joint();
            return index != joint.index()
                    && height(index) != Height.RAISED
                    && !network.isBench(index)
                    && Accessibility.inOrder(network, index, open, planned)
                    && reach.canOpen(index, open, movedAside(with(pulled)));
        }

        private List<Move> with(List<Move> pulled) {
            List<Move> all = new ArrayList<>(early);
            all.addAll(pulled);
            return all;
        }

        private static BitSet open(List<Move> done) {
            BitSet open = new BitSet();
            for (Move move : done) {
                if (move instanceof Move.Open one) {
                    open.set(one.joint());
                }
            }
            return open;
        }

        private BitSet movedAside(List<Move> done) {
            BitSet moved = new BitSet();
            for (Move move : done) {
                if (move instanceof Move.MoveAside aside && asides.get(aside.part())) {
                    moved.set(aside.part());
                }
            }
            return moved;
        }
    }
}

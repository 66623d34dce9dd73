package putback.plan.steps;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import putback.plan.access.Accessibility;
import putback.plan.access.Network;
import putback.plan.access.Numbers;
import putback.plan.order.Move;
import putback.plan.selection.Selection;
import putback.sheet.Assembly;
import putback.sheet.Height;
import putback.sheet.Joint;

/**
 * What is opened before the car is raised: what comes first anyway, and what is in the way of a fastener that is broken
 * loose on wheels. What is worked on wheels comes before a wheel is off.
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
            for (int joint : selection.open()) {
                planned.set(joint);
            }
            for (int part : selection.aside()) {
                asides.set(part);
            }
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
                if (planned.get(joint.index()) && joint.entry().breakLooseOnWheels()) {
                    pull(joint, new Reached(joint));
                }
            }
            for (Move move : whileAWheelIsOff()) {
                pull(null, new Done(move));
            }
            List<Move> all = new ArrayList<>(early);
            all.addAll(late);
            return new OnWheelsFirst(all, early.size());
        }

        /** Enough is done once the joint can be reached on wheels. */
        private final class Reached implements Predicate<List<Move>> {
            private final Joint joint;

            Reached(Joint joint) {
                this.joint = joint;
            }

            @Override
            public boolean test(List<Move> done) {
                return reach.isClear(joint, joint.reachOnWheels(), open(done), movedAside(done));
            }
        }

        /** Enough is done once the move is among it. */
        private record Done(Move move) implements Predicate<List<Move>> {
            @Override
            public boolean test(List<Move> done) {
                return done.contains(move);
            }
        }

        /** What would be opened on wheels although one of them is off by then. */
        private List<Move> whileAWheelIsOff() {
            List<Move> found = new ArrayList<>();
            boolean off = false;
            for (Move move : late) {
                if (move instanceof Move.Open one) {
                    if (off && height(one.joint()) == Height.ON_WHEELS) {
                        found.add(move);
                    }
                    Joint joint = assembly.joints().get(one.joint());
                    off |= height(one.joint()) == Height.RAISED && holdsWheel(joint);
                }
            }
            return found;
        }

        private boolean holdsWheel(Joint joint) {
            for (int part : joint.joins()) {
                if (Job.isWheel(assembly.parts().get(part))) {
                    return true;
                }
            }
            return false;
        }

        /**
         * Brings forward what may be opened on wheels until it is enough, then leaves out again what is not needed.
         *
         * @param not a joint that stays where it is; null for none
         */
        private void pull(@Nullable Joint not, Predicate<List<Move>> enough) {
            List<Move> pulled = new ArrayList<>();
            boolean moved = !enough.test(early);
            while (moved) {
                moved = false;
                for (Move move : late) {
                    if (!pulled.contains(move) && canPull(move, not, pulled)) {
                        pulled.add(move);
                        moved = true;
                    }
                }
            }
            if (!enough.test(with(pulled))) {
                return;
            }
            for (int i = pulled.size() - 1; i >= 0; i--) {
                List<Move> fewer = new ArrayList<>(pulled);
                fewer.remove(i);
                if (enough.test(with(fewer)) && isSound(fewer, not)) {
                    pulled.remove(i);
                }
            }
            early.addAll(pulled);
            late.removeAll(pulled);
        }

        private boolean isSound(List<Move> sequence, @Nullable Joint not) {
            List<Move> done = new ArrayList<>();
            for (Move move : sequence) {
                if (!canPull(move, not, done)) {
                    return false;
                }
                done.add(move);
            }
            return true;
        }

        private boolean canPull(Move move, @Nullable Joint not, List<Move> pulled) {
            BitSet open = open(with(pulled));
            if (move instanceof Move.MoveAside aside) {
                return Numbers.allIn(assembly.parts().get(aside.part()).asideOpens(), open);
            }
            int index = ((Move.Open) move).joint();
            return (not == null || index != not.index())
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

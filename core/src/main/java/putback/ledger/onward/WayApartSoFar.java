package putback.ledger.onward;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import org.jspecify.annotations.Nullable;
import putback.ledger.Did;
import putback.ledger.Event;
import putback.ledger.Struck;
import putback.plan.Plan;
import putback.plan.access.Accessibility;
import putback.plan.access.Network;
import putback.plan.access.Numbers;
import putback.plan.order.Move;
import putback.sheet.Joint;

/** The moves of a plan that are done, in the order of the ledger, and those that are not, in the order of the plan. */
final class WayApartSoFar {
    private final Plan plan;
    private final Network network;
    private final Accessibility access;
    private final BitSet asides = new BitSet();
    private final BitSet moved = new BitSet();
    private final BitSet undone = new BitSet();
    private final List<Move> done = new ArrayList<>();
    private boolean sound = true;

    WayApartSoFar(Plan plan, List<Event> events) {
        this.plan = plan;
        this.network = Network.of(plan.assembly());
        this.access = new Accessibility(network);
        for (int part : plan.selection().aside()) {
            asides.set(part);
        }
        for (Event event : Struck.remaining(events)) {
            add(event);
        }
    }

    private void add(Event event) {
        Joint joint = joint(plan, event.joint());
        if (event.did() == Did.UNDO && joint != null && isPlanned(joint) && !undone.get(joint.index())) {
            sound &= isInTurn(joint.index());
            open(joint.index());
        }
        if (event.did() == Did.ASIDE && event.part() != null) {
            for (int part : Numbers.in(asides)) {
                boolean same = plan.assembly().parts().get(part).id().equals(event.part());
                if (same && !moved.get(part) && Numbers.allIn(needs(part), undone)) {
                    move(part);
                }
            }
        }
    }

    static @Nullable Joint joint(Plan plan, @Nullable String id) {
        for (Joint joint : plan.assembly().joints()) {
            if (joint.id().equals(id)) {
                return joint;
            }
        }
        return null;
    }

    private List<Integer> needs(int part) {
        return plan.assembly().parts().get(part).asideOpens();
    }

    boolean isPlanned(Joint joint) {
        return plan.selection().open().contains(joint.index());
    }

    boolean isUndone(Joint joint) {
        return undone.get(joint.index());
    }

    /** Whether the plan's own rules allow for the order in which it was done. */
    boolean isSound() {
        return sound;
    }

    private boolean isInTurn(int joint) {
        return access.canOpen(joint, undone, asides) && Accessibility.inOrder(network, joint, undone, planned());
    }

    BitSet planned() {
        BitSet planned = new BitSet();
        for (int joint : plan.selection().open()) {
            planned.set(joint);
        }
        return planned;
    }

    /** Opens it, and before it moves aside what has to be. */
    private void open(int joint) {
        if (!access.canOpen(joint, undone, moved)) {
            for (int part : Numbers.in(asides)) {
                if (!moved.get(part) && Numbers.allIn(needs(part), undone)) {
                    move(part);
                }
            }
        }
        undone.set(joint);
        done.add(new Move.Open(joint));
    }

    private void move(int part) {
        moved.set(part);
        done.add(new Move.MoveAside(part));
    }

    /** All moves of the plan: those that are done, the one that is chosen, the rest in the plan's order. */
    List<Move> with(int chosen) {
        open(chosen);
        return all();
    }

    List<Move> all() {
        List<Move> all = new ArrayList<>(done);
        for (Move move : plan.moves()) {
            if (!all.contains(move)) {
                all.add(move);
            }
        }
        return all;
    }

    /** How many of all moves are done. */
    int count() {
        return done.size();
    }
}

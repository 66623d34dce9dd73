package putback.ledger.onward;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import putback.ledger.Event;
import putback.ledger.JointState;
import putback.ledger.PlanPromise;
import putback.ledger.PlanStep;
import putback.ledger.Standing;
import putback.plan.Plan;
import putback.plan.Planner;
import putback.plan.order.Move;
import putback.quantity.Shown;
import putback.sheet.Joint;

/**
 * The rest of a job, from where the car stands. A joint may be chosen to come next; the plan's other steps follow in a
 * sound order, back together too. Never changes: a choice gives another one.
 */
public final class Onward {
    private final Plan plan;
    private final Standing standing;

    private Onward(Plan plan, Standing standing) {
        this.plan = plan;
        this.standing = standing;
    }

    /**
     * After these events. What they opened out of the plan's turn stands first in its order; where that order cannot be
     * sound, as after a joint beyond the plan was opened, the plan keeps its own.
     *
     * @param plan as it was made, or as the last choice left it
     */
    public static Onward of(Plan plan, List<Event> events) {
        WayApartSoFar soFar = new WayApartSoFar(plan, events);
        List<Move> moves = soFar.all();
        boolean same = !soFar.isSound() || moves.equals(plan.moves());
        return along(same ? plan : Planner.inOrder(plan, moves), events);
    }

    private static Onward along(Plan plan, List<Event> events) {
        return new Onward(plan, Standing.of(PlanPromise.of(plan), events));
    }

    /** The whole plan, what is done first. */
    public Plan plan() {
        return plan;
    }

    public Standing standing() {
        return standing;
    }

    /** The steps that are left, in order. */
    public List<PlanStep> toDo() {
        return standing.toDo();
    }

    /** Joints of the plan that may be undone next, in its order. */
    public List<Joint> mayUndo() {
        List<Joint> may = new ArrayList<>();
        for (Move move : plan.moves()) {
            if (move instanceof Move.Open open) {
                Joint joint = plan.assembly().joints().get(open.joint());
                if (choose(joint.id()) instanceof Choice.Accepted) {
                    may.add(joint);
                }
            }
        }
        return may;
    }

    /** Puts a joint next, or says what is in the way. */
    public Choice choose(String id) {
        Joint joint = WayApartSoFar.joint(plan, id);
        if (joint == null) {
            return new Choice.Refused("There is no fixing " + Shown.text(id) + " on this car.");
        }
        WayApartSoFar soFar = new WayApartSoFar(plan, standing.events());
        if (!soFar.isPlanned(joint)) {
            return new Choice.Refused(joint.name() + " stays shut in this plan. Maybe plan anew with what it holds.");
        }
        if (soFar.isUndone(joint)) {
            return new Choice.Refused(joint.name() + " has been undone already.");
        }
        String inTheWay = new InTheWay(plan, open(), soFar.planned()).of(joint);
        if (!inTheWay.isEmpty()) {
            return new Choice.Refused(inTheWay);
        }
        return soFar.isSound() ? next(joint, soFar) : outOfTurn(joint);
    }

    /** Joints that are open now, whoever planned it. */
    private BitSet open() {
        BitSet open = new BitSet();
        Map<String, JointState> states = standing.joints();
        for (Joint joint : plan.assembly().joints()) {
            JointState state = states.getOrDefault(joint.id(), JointState.UNTOUCHED);
            open.set(joint.index(), state == JointState.OUT);
        }
        return open;
    }

    private Choice next(Joint joint, WayApartSoFar soFar) {
        List<Move> moves = soFar.with(joint.index());
        Plan chosen = moves.equals(plan.moves()) ? plan : Planner.inOrder(plan, moves);
        int done = soFar.count();
        if (!chosen.moves().subList(0, done).equals(moves.subList(0, done))) {
            return new Choice.Refused(first(chosen.moves(), moves) + " comes before " + joint.name()
                    + ": it is worked on with the car on its wheels, and could not be reached after that.");
        }
        return new Choice.Accepted(along(chosen, standing.events()));
    }

    /** The joint that cannot wait. */
    private String first(List<Move> sound, List<Move> wished) {
        for (int i = 0; i < sound.size(); i++) {
            if (!sound.get(i).equals(wished.get(i)) && sound.get(i) instanceof Move.Open open) {
                return plan.assembly().joints().get(open.joint()).name();
            }
        }
        return "Another fixing";
    }

    private static Choice outOfTurn(Joint joint) {
        return new Choice.Refused(
                joint.name() + " can be reached, but what is open already is open in an order that this"
                        + " plan cannot follow. Maybe plan anew.");
    }
}

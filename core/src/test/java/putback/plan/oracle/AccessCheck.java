package putback.plan.oracle;

import java.util.BitSet;
import java.util.Iterator;
import java.util.List;
import java.util.Set;
import putback.plan.order.Move;
import putback.plan.steps.Act;
import putback.plan.steps.Phase;
import putback.plan.steps.Step;
import putback.sheet.Height;
import putback.sheet.Joint;
import putback.sheet.Station;

/**
 * Whether the hand reaches the joint of each step.
 *
 * <p>Readings. A joint is closed for others as soon as it is started; it may be started when, with all joints open that
 * are still open after it, it could be opened. Run-down and tightening ask for what opening asks: what is behind, or on
 * wheels what is in the way there; joints that had to be open before it; and on the bench, that its parts are off. A joint
 * that is broken loose before others is broken loose while all of them are shut, and tightened when they hold again: it
 * turns beside them, so they need not be open for that.
 */
final class AccessCheck extends Check {
    private static final Set<Act> TURNS = Set.of(Act.RUN_DOWN, Act.TIGHTEN);

    private final Rules rules = scene.rules;
    private final Iterator<Move> moves = scene.plan.moves().iterator();
    private final BitSet joints = new BitSet();

    AccessCheck(Scene scene) {
        super(scene);
        scene.plan.selection().open().forEach(joints::set);
    }

    @Override
    void before(Step step) {
        if (step.act() == Act.UNDO) {
            undo(step);
        } else if (step.act() == Act.START) {
            start(step);
        } else if (TURNS.contains(step.act())) {
            turn(step);
        } else if (step.act() == Act.BREAK_LOOSE) {
            breakLoose(step, rules.joint(Scene.joint(step)));
        } else if (scene.movesAside(step)) {
            Move expected = new Move.MoveAside(Scene.part(step));
            complain(!moves.hasNext() || !moves.next().equals(expected), step, "another move is next");
        }
    }

    private void breakLoose(Step step, Joint joint) {
        if (joint.entry().breakLooseOnWheels()) {
            complain(!clear(joint, joint.reachOnWheels()), step, "it cannot be reached on wheels");
            return;
        }
        complain(!clear(joint, joint.behind()), step, "something is in the way: " + joint.behind());
        joint.loosenBefore().forEach(k -> complain(scene.open.get(k), step, jointId(k) + " holds it no more"));
    }

    private void undo(Step step) {
        int j = Scene.joint(step);
        complain(!moves.hasNext() || !moves.next().equals(new Move.Open(j)), step, "another move is next");
        complain(step.phase() != Phase.APART, step, "it is undone on the way together");
        complain(!rules.accessible(j, scene.open, scene.bonds(), scene.aside), step, "it is out of reach");
        complain(!rules.firstOnesOpen(j, joints, scene.open), step, "another joint goes first");
    }

    private void start(Step step) {
        int j = Scene.joint(step);
        complain(step.phase() != Phase.TOGETHER, step, "it is started on the way apart");
        BitSet later = (BitSet) scene.open.clone();
        later.clear(j);
        BitSet aside = new BitSet();
        scene.aside.stream().filter(p -> rules.canGoAside(p, later)).forEach(aside::set);
        Bonds bonds = rules.bonds(later);
        complain(!rules.accessible(j, later, bonds, aside), step, "it could not be opened again from here");
        List<Integer> before = rules.comeFirst(j).stream().filter(joints::get).toList();
        before.forEach(k -> complain(!scene.open.get(k), step, jointId(k) + " goes first and is closed already"));
    }

    private void turn(Step step) {
        Joint joint = rules.joint(Scene.joint(step));
        boolean onWheels = step.height() == Height.ON_WHEELS;
        List<List<Integer>> clauses = onWheels ? joint.reachOnWheels() : joint.behind();
        complain(!clear(joint, clauses), step, "something is in the way: " + clauses);
        List<Integer> beside = joint.loosenBefore();
        joint.after().stream()
                .filter(k -> !beside.contains(k))
                .forEach(k -> complain(!scene.open.get(k), step, jointId(k) + " is closed already"));
        if (step.act() == Act.TIGHTEN) {
            beside.forEach(
                    k -> complain(joints.get(k) && !scene.isSecured(k), step, jointId(k) + " does not hold it yet"));
        }
        boolean bench = joint.entry().station() == Station.BENCH;
        complain(
                bench && !joint.joins().stream().allMatch(scene.bonds()::off), step, "it is not on the bench any more");
    }

    private boolean clear(Joint joint, List<List<Integer>> clauses) {
        return rules.clausesMet(clauses, joint, scene.bonds(), scene.aside);
    }

    @Override
    void end() {
        complain(moves.hasNext(), "not all moves are made");
        complain(!scene.open.isEmpty(), "joints are still open at the end: " + scene.open);
        scene.plan.selection().off().forEach(scene.aside::clear);
        complain(!scene.aside.isEmpty(), "parts are still aside at the end: " + scene.aside);
    }
}

package putback.plan.oracle;

import java.util.BitSet;
import java.util.TreeSet;
import putback.plan.steps.Act;
import putback.plan.steps.Phase;
import putback.plan.steps.Step;

/**
 * Groups that end up hung are tied up.
 *
 * <p>Readings. A group is tied up with an aid in an aside step once it hangs and before the next joint is undone, if it
 * is still hung at the end of the way apart; an aid that was put on the same part before may carry it. What hangs in one
 * piece is all that is held together, without tethers whose other end is held to the body; a tether between two hanging
 * pieces goes with either. A step that names a tether names each piece whole that it says hangs on it; another piece on
 * the same tether may have an aid of its own. The aid comes off when the group is held to the body again.
 */
final class HangingCheck extends Check {
    /** Hung at the end of the way apart. */
    private final BitSet endsHung = new BitSet();

    private final BitSet tiedUp = new BitSet();

    HangingCheck(Scene scene) {
        super(scene);
        scene.plan.selection().hung().forEach(endsHung::set);
    }

    @Override
    void before(Step step) {
        boolean next = step.act() == Act.UNDO || step.phase() == Phase.TOGETHER;
        for (int p = endsHung.nextSetBit(0); next && p >= 0; p = endsHung.nextSetBit(p + 1)) {
            boolean hangs = step.phase() == Phase.APART && scene.bonds().hung(p) && !scene.isHeld(p);
            boolean late = step.phase() == Phase.TOGETHER && !tiedUp.get(p);
            complain(hangs || late, step, partId(p) + " dangles");
            tiedUp.set(p, tiedUp.get(p) || late);
        }
        if (step.act() == Act.ASIDE && !scene.movesAside(step)) {
            tieUp(step);
        }
        if (scene.movesAside(step) && step.aid() != null) {
            Scene.group(step).stream().filter(p -> scene.bonds().hung(p)).forEach(tiedUp::set);
        }
        if (step.act() == Act.RELEASE && step.part() != null) {
            release(step);
        }
    }

    private void tieUp(Step step) {
        TreeSet<Integer> group = Scene.group(step);
        complain(step.aid() == null, step, "it is tied up with nothing");
        group.forEach(p -> complain(!scene.bonds().hung(p), step, partId(p) + " does not hang"));
        TreeSet<Integer> piece = new TreeSet<>();
        for (int p = 1; p < scene.assembly().parts().size(); p++) {
            if (scene.bonds().hung(p) && scene.bonds().held(Scene.part(step), p)) {
                piece.add(p);
            }
        }
        complain(!piece.containsAll(group), step, "the group that hangs in one piece is " + piece);
        piece.removeIf(p -> scene.rules.part(p).isTether());
        if (scene.rules.part(Scene.part(step)).isTether()) {
            piece.removeIf(p -> group.stream().noneMatch(named -> isRigidWith(named, p)));
        }
        complain(!group.containsAll(piece), step, "the group that hangs in one piece has " + piece);
        group.forEach(tiedUp::set);
    }

    private boolean isRigidWith(int named, int part) {
        return !scene.rules.part(named).isTether() && scene.bonds().held(named, part);
    }

    private void release(Step step) {
        Scene.Hold hold = scene.holdOf(step);
        if (hold != null && !hold.support()) {
            complain(scene.bonds().hung(hold.part()), step, "it still hangs");
        }
    }

    @Override
    void end() {
        endsHung.andNot(tiedUp);
        endsHung.stream().forEach(p -> complain(true, partId(p) + " ends up hung and is not tied up"));
    }
}

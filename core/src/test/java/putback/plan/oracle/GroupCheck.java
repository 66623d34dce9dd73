package putback.plan.oracle;

import java.util.BitSet;
import java.util.TreeSet;
import putback.plan.steps.Phase;
import putback.plan.steps.Step;

/**
 * What leaves the car, and comes back.
 *
 * <p>Readings. What leaves together is everything that closed joints tie together, tethers included. It is taken off
 * once no joint ties it to the body and before the next joint is undone. It is offered up before a joint is started that
 * ties it to the body; a part that is put into its group on the bench first is offered up twice, and a part that was
 * aside is offered up when it goes back.
 */
final class GroupCheck extends Check {
    private final BitSet takenOff = new BitSet();
    private final BitSet offeredUp = new BitSet();

    GroupCheck(Scene scene) {
        super(scene);
    }

    @Override
    void before(Step step) {
        switch (step.act()) {
            case UNDO -> nothingLeft(step);
            case TAKE_OFF -> takeOff(step);
            case OFFER_UP -> offerUp(step);
            case START -> start(step);
            default -> {}
        }
    }

    private void nothingLeft(Step step) {
        for (int p = 1; p < scene.assembly().parts().size(); p++) {
            complain(scene.bonds().off(p) && !takenOff.get(p), step, partId(p) + " is loose and not taken off");
        }
    }

    private void takeOff(Step step) {
        complain(step.phase() != Phase.APART, step, "it is taken off on the way together");
        TreeSet<Integer> group = Scene.group(step);
        for (int p : group) {
            complain(!scene.bonds().off(p), step, partId(p) + " is still tied to the body");
            complain(takenOff.get(p), step, partId(p) + " is off already");
            takenOff.set(p);
        }
        TreeSet<Integer> tied = tied(Scene.part(step));
        complain(!group.equals(tied), step, "what leaves in one piece is " + tied);
    }

    private void offerUp(Step step) {
        complain(step.phase() != Phase.TOGETHER, step, "it is offered up on the way apart");
        TreeSet<Integer> group = Scene.group(step);
        for (int p : group) {
            boolean away = scene.bonds().off(p) || scene.aside.get(p);
            complain(!away, step, partId(p) + " is in its place already");
            offeredUp.set(p);
        }
        TreeSet<Integer> tied = tied(Scene.part(step));
        boolean off = scene.bonds().off(Scene.part(step));
        complain(off && !group.equals(tied), step, "what goes back in one piece is " + tied);
    }

    private TreeSet<Integer> tied(int part) {
        TreeSet<Integer> tied = new TreeSet<>();
        for (int p = 1; p < scene.assembly().parts().size(); p++) {
            if (scene.bonds().tied(part, p)) {
                tied.add(p);
            }
        }
        return tied;
    }

    private void start(Step step) {
        BitSet later = (BitSet) scene.open.clone();
        later.clear(Scene.joint(step));
        Bonds then = scene.rules.bonds(later);
        for (int p = 1; p < scene.assembly().parts().size(); p++) {
            boolean comesBack = scene.bonds().off(p) && !then.off(p);
            complain(comesBack && !offeredUp.get(p), step, partId(p) + " is not offered up");
        }
    }

    @Override
    void end() {
        scene.plan.selection().off().forEach(p -> {
            complain(!takenOff.get(p), partId(p) + " is never taken off");
            complain(!offeredUp.get(p), partId(p) + " is never offered up");
        });
    }
}

package putback.plan.oracle;

import java.util.HashSet;
import java.util.Set;
import putback.plan.steps.Phase;
import putback.plan.steps.Step;
import putback.sheet.Joint;
import putback.sheet.Letting;

/**
 * Aids that hold what a joint lets go.
 *
 * <p>Readings. An aid is asked for before the joint is undone; a strap or a jack is not, when the part is off at that
 * moment or something holds it up already. On the way back the same aid has to be there when the joint is started. It
 * comes off when all opened joints that name it for this part are tight, or run down where they are tightened under
 * weight or after a follow-up, or started where they have no thread. The compressor of a spring that is renewed comes off the old one while
 * that is off the car; other aids may wait where they are. A part is raised again before the joint is closed that let it
 * down, not before others that were opened later.
 */
final class AidCheck extends Check {
    private static final String SPRING_COMPRESSOR = "spring compressor";
    private static final Set<String> ONLY_WHERE_NEEDED = Set.of("strap", "jack");

    /**
     * @param joint index
     */
    private record Asked(int joint, Letting letting) {}

    private final Set<Asked> asked = new HashSet<>();
    private final Set<Asked> downFor = new HashSet<>();
    private final Set<Asked> toLetDown = new HashSet<>();

    AidCheck(Scene scene) {
        super(scene);
    }

    @Override
    void before(Step step) {
        switch (step.act()) {
            case UNDO -> undo(step);
            case START -> start(step);
            case SUPPORT -> complain(step.aid() == null || step.part() == null, step, "it names no aid or no part");
            case LET_DOWN -> letDown(step);
            case JACK_UP -> complain(!scene.letDown.get(Scene.part(step)), step, "it was not let down");
            case RELEASE -> release(step);
            case RENEW -> renew(step);
            default -> {}
        }
    }

    private void undo(Step step) {
        toLetDown.forEach(late -> complain(true, step, partId(late.letting().part()) + " is not let down first"));
        int j = Scene.joint(step);
        for (Letting letting : scene.rules.joint(j).letsGo()) {
            int part = letting.part();
            boolean there = scene.isOn(letting.aid(), part);
            boolean off = scene.bonds().off(part);
            boolean spared = ONLY_WHERE_NEEDED.contains(letting.aid()) && (off || scene.isHeld(part));
            complain(!there && !spared, step, "no " + letting.aid() + " on " + partId(part));
            if (there) {
                asked.add(new Asked(j, letting));
            }
            if (there && letting.letDown() && !off && !scene.letDown.get(part) && !isHeldUpByAnother(j, letting)) {
                toLetDown.add(new Asked(j, letting));
                downFor.add(new Asked(j, letting));
            }
        }
    }

    /** Whether a joint that lets the same part down is still to be opened; the part is let down after the last. */
    private boolean isHeldUpByAnother(int joint, Letting letting) {
        return scene.plan.selection().open().stream()
                .filter(other -> other != joint && !scene.open.get(other))
                .anyMatch(other -> scene.rules.joint(other).letsGo().contains(letting));
    }

    private void letDown(Step step) {
        int part = Scene.part(step);
        complain(!toLetDown.removeIf(due -> due.letting().part() == part), step, "no joint lets it down now");
    }

    private void start(Step step) {
        int j = Scene.joint(step);
        for (Letting letting : scene.rules.joint(j).letsGo()) {
            if (asked.contains(new Asked(j, letting))) {
                boolean there = scene.isOn(letting.aid(), letting.part());
                complain(!there, step, "no " + letting.aid() + " on " + partId(letting.part()) + " any more");
                boolean down = scene.letDown.get(letting.part()) && downFor.contains(new Asked(j, letting));
                complain(down, step, partId(letting.part()) + " is still let down");
            }
        }
    }

    private void release(Step step) {
        Scene.Hold hold = step.part() == null ? null : scene.holdOf(step);
        complain(hold == null, step, "there is no such aid");
        if (hold == null || !hold.support() || changedWithThePart(step, hold)) {
            return;
        }
        for (Joint joint : scene.assembly().joints()) {
            for (Letting letting : joint.letsGo()) {
                if (asked.contains(new Asked(joint.index(), letting))
                        && letting.part() == hold.part()
                        && letting.aid().equals(hold.aid())) {
                    complain(!scene.isSecured(joint.index()), step, joint.id() + " asked for it and is not done");
                }
            }
        }
    }

    private void renew(Step step) {
        for (Scene.Hold hold : scene.holds) {
            boolean old = hold.support() && Scene.group(step).contains(hold.part());
            boolean ownForEach = hold.aid().equals(SPRING_COMPRESSOR);
            complain(old && ownForEach, step, hold.aid() + " is still on the old " + partId(hold.part()));
        }
    }

    private boolean changedWithThePart(Step step, Scene.Hold hold) {
        return step.phase() == Phase.APART && scene.bonds().off(hold.part());
    }

    @Override
    void end() {
        scene.holds.forEach(hold -> complain(true, hold.aid() + " is left on " + partId(hold.part())));
        complain(!scene.letDown.isEmpty(), "parts are still let down: " + scene.letDown);
        toLetDown.forEach(due -> complain(true, partId(due.letting().part()) + " is never let down"));
    }
}

package putback.plan.oracle;

import java.util.Objects;
import putback.plan.steps.Act;
import putback.plan.steps.Phase;
import putback.plan.steps.Step;
import putback.sheet.Fastener;
import putback.sheet.Height;
import putback.sheet.Joint;

/**
 * How the car stands at each step.
 *
 * <p>Readings. The car comes on its wheels and leaves on them; only a height step changes how it stands, and its own
 * height is the new one. Ride height and on wheels are both under weight; a tightening at ride height may be done on
 * wheels, as the owing allows. Raised is what a sheet asks for a tightening when it says nothing, so a joint that is
 * worked on wheels or at any height may then be tightened as it is worked. A joint started on the wheels is under weight
 * from the start and only has to be run down before the car moves again.
 */
final class HeightCheck extends Check {
    HeightCheck(Scene scene) {
        super(scene);
    }

    @Override
    void before(Step step) {
        complain(step.height() == Height.ANY, step, "the car stands somehow");
        if (step.act() == Act.HEIGHT) {
            complain(step.height() == scene.height, step, "it stands like that already");
            notRunDown(step);
            return;
        }
        complain(step.height() != scene.height, step, "it stands " + scene.height.word());
        switch (step.act()) {
            case UNDO, START -> worked(step, joint(step).entry().height());
            case BREAK_LOOSE ->
                worked(
                        step,
                        joint(step).entry().breakLooseOnWheels()
                                ? Height.ON_WHEELS
                                : joint(step).entry().height());
            case TIGHTEN -> tighten(step);
            case FOLLOW_UP ->
                worked(step, Objects.requireNonNull(step.followUp()).height());
            default -> {}
        }
    }

    private void worked(Step step, Height asked) {
        complain(!fits(asked, step.height()), step, "it is done " + asked.word());
    }

    private static boolean fits(Height asked, Height stands) {
        return asked == Height.ANY || asked == stands;
    }

    private static Joint joint(Step step) {
        return Objects.requireNonNull(step.joint());
    }

    private void tighten(Step step) {
        Fastener fastener =
                step.fastener() != null ? step.fastener() : joint(step).fastener();
        Height asked = fastener.tighten();
        boolean asWorked = asked == Height.RAISED && fits(joint(step).entry().height(), step.height());
        boolean loaded = asked == Height.RIDE_HEIGHT && step.height() == Height.ON_WHEELS;
        complain(!asWorked && !loaded && asked != step.height(), step, "it is tightened " + asked.word());
    }

    /** Run down before any weight comes on it. */
    private void notRunDown(Step step) {
        if (step.phase() != Phase.TOGETHER || step.height() == Height.RAISED) {
            return;
        }
        for (Joint joint : scene.assembly().joints()) {
            complain(
                    joint.entry().kind().threaded() && scene.fixings[joint.index()] == Scene.Fixing.STARTED,
                    step,
                    joint.id() + " is only started");
        }
    }

    @Override
    void end() {
        complain(scene.height != Height.ON_WHEELS, "the car does not stand on its wheels at the end");
    }
}

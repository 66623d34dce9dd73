package putback.plan.steps;

import putback.plan.access.Numbers;
import putback.sheet.Joint;
import putback.sheet.JointKind;
import putback.sheet.Part;
import putback.sheet.Side;
import putback.sheet.StoredEnergy;

/** Warns of a spring that comes out of its seat with nothing to take its load. */
final class BareSprings {
    private final Job job;
    private final StepLog log;
    private final AidsOn aids;
    private final ApartScene scene;

    BareSprings(Job job, StepLog log, AidsOn aids, ApartScene scene) {
        this.job = job;
        this.log = log;
        this.aids = aids;
        this.scene = scene;
    }

    void after(Joint joint) {
        if (joint.entry().kind() != JointKind.SEAT) {
            return;
        }
        for (int index : joint.joins()) {
            Part part = job.part(index);
            if (part.entry().storedEnergy() == StoredEnergy.SPRING && !isHeld(index) && !isSlack(part)) {
                log.warn("The sheet names neither a compressor nor a jack that lets " + Words.the(part)
                        + " go slack before opening " + Words.of(joint) + ".");
            }
        }
    }

    private boolean isHeld(int spring) {
        for (AidsOn.On aid : aids.all()) {
            if (Job.isCompressor(aid.name) && aid.part.index() == spring) {
                return true;
            }
        }
        return false;
    }

    private boolean isSlack(Part spring) {
        for (int index : Numbers.in(scene.letDown)) {
            Side side = job.part(index).side();
            if (side == spring.side() || side == Side.NONE) {
                return true;
            }
        }
        return false;
    }
}

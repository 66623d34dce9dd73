package putback.plan.steps;

import java.util.ArrayList;
import java.util.List;
import putback.plan.order.Move;
import putback.sheet.Height;
import putback.sheet.Joint;
import putback.sheet.Part;

/** Breaks loose first what the sheet wants loose on wheels, or while another joint still holds it. */
final class BreakingLoose {
    private final Job job;
    private final StepLog log;
    private final ApartScene scene;
    private final Footing footing;
    private final Preparing preparing;

    BreakingLoose(Job job, StepLog log, ApartScene scene, Footing footing, Preparing preparing) {
        this.job = job;
        this.log = log;
        this.scene = scene;
        this.footing = footing;
        this.preparing = preparing;
    }

    void reachedOnWheels() {
        for (Joint joint : onWheels()) {
            if (job.reach.isClear(joint, joint.reachOnWheels(), scene.open, scene.movedAside)) {
                loosenOnWheels(joint);
            }
        }
    }

    /** Before the car is raised, although something is in the way. */
    void restOnWheels() {
        for (Joint joint : onWheels()) {
            List<Integer> inTheWay = job.reach.blockers(joint, joint.reachOnWheels(), scene.open, scene.movedAside);
            log.warn(joint.name() + " is to be broken loose on wheels, but " + blockers(inTheWay)
                    + " off only when the car is raised.");
            loosenOnWheels(joint);
        }
    }

    private String blockers(List<Integer> indices) {
        List<Part> parts = job.parts(indices);
        return Words.the(parts) + (parts.size() == 1 ? " is in the way and comes" : " are in the way and come");
    }

    void onWheelsAtLast(Joint joint) {
        if (joint.entry().breakLooseOnWheels() && !isLoose(joint)) {
            loosenOnWheels(joint);
        }
    }

    private boolean isLoose(Joint joint) {
        return scene.loosened.get(joint.index()) || scene.open.get(joint.index());
    }

    /** In the order in which they are opened. */
    private List<Joint> onWheels() {
        List<Joint> joints = new ArrayList<>();
        for (Joint joint : toOpen()) {
            if (joint.entry().breakLooseOnWheels()) {
                joints.add(joint);
            }
        }
        return joints;
    }

    private List<Joint> toOpen() {
        List<Joint> joints = new ArrayList<>();
        for (Move move : job.moves) {
            if (move instanceof Move.Open one && !isLoose(job.joint(one.joint()))) {
                joints.add(job.joint(one.joint()));
            }
        }
        return joints;
    }

    private void loosenOnWheels(Joint joint) {
        footing.stand(Height.ON_WHEELS, scene.wheelIsOff());
        loosen(joint, " with the car on its wheels: half a turn, no more.");
    }

    /** What this joint still holds, while it does. */
    void heldBy(Joint holder) {
        for (Joint joint : toOpen()) {
            if (joint.loosenBefore().contains(holder.index())) {
                loosenWhileHeld(joint, holder);
            }
        }
    }

    private void loosenWhileHeld(Joint joint, Joint holder) {
        List<Integer> inTheWay = job.reach.blockers(joint, joint.behind(), scene.open, scene.movedAside);
        if (!inTheWay.isEmpty()) {
            log.warn(joint.name() + " is to be broken loose before " + Words.of(holder) + " is opened, but "
                    + blockers(inTheWay) + " off later.");
        }
        footing.stand(Job.heightOf(joint), scene.wheelIsOff());
        preparing.mark(joint);
        loosen(joint, " while " + Words.of(holder) + " still holds: a quarter turn, no more.");
    }

    private void loosen(Joint joint, String how) {
        scene.loosened.set(joint.index());
        preparing.beforeOpening(joint);
        log.add(Draft.at(Act.BREAK_LOOSE, joint, "Break loose " + Words.of(joint) + how)
                .turning(joint, joint.fastener())
                .minutes(Charges.loosen(joint))
                .caution(Cautions.leftHand(joint)));
    }
}

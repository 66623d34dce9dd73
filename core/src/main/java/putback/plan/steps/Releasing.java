package putback.plan.steps;

import java.util.BitSet;
import putback.plan.access.Ties;

/** Takes aids off once what they held is held by its own fixings again. */
final class Releasing {
    private final Job job;
    private final StepLog log;
    private final AidsOn aids;
    private final TogetherScene scene;
    private final Charges charges;
    private final Cautions cautions;

    Releasing(Job job, StepLog log, AidsOn aids, TogetherScene scene, Charges charges, Cautions cautions) {
        this.job = job;
        this.log = log;
        this.aids = aids;
        this.scene = scene;
        this.charges = charges;
        this.cautions = cautions;
    }

    void whatIsDone() {
        for (AidsOn.On aid : aids.all()) {
            if (isDone(aid)) {
                release(aid);
            }
        }
    }

    private boolean isDone(AidsOn.On aid) {
        BitSet waiting = (BitSet) aid.askers.clone();
        waiting.andNot(scene.secured);
        if (!waiting.isEmpty() || aid.holdsAside) {
            return false;
        }
        BitSet unsafe = scene.unsafe();
        boolean asideOpen = scene.movedAside.get(aid.part.index())
                && job.part(aid.part.index()).asideOpens().stream().anyMatch(unsafe::get);
        if (asideOpen || Job.isCompressor(aid.name)) {
            return !asideOpen;
        }
        return isHeldAgain(aid, unsafe) || !aid.carriesGroup && isHeldByAnother(aid);
    }

    /** Held to the car; or, where it hangs on a whole car too, with all its own joints closed. */
    private boolean isHeldAgain(AidsOn.On aid, BitSet unsafe) {
        if (!job.hangsAlways(aid.part.index())) {
            return scene.bearing().heldToBody(aid.part.index());
        }
        BitSet group = (BitSet) aid.pays.clone();
        group.set(aid.part.index());
        return unsafe.stream()
                .noneMatch(joint -> job.joint(joint).joins().stream().anyMatch(group::get));
    }

    /** Whether something else holds up what it hangs in one piece with. */
    private boolean isHeldByAnother(AidsOn.On aid) {
        Ties ties = scene.bearing();
        return aids.all().stream()
                .anyMatch(other -> other != aid
                        && !Job.isCompressor(other.name)
                        && ties.heldTogether(other.part.index(), aid.part.index()));
    }

    private void release(AidsOn.On aid) {
        aids.takeOff(aid);
        log.add(Draft.with(Act.RELEASE, aid.part, AidText.off(aid.part, aid.name))
                .aid(aid.name)
                .minutes(charges.back(aid.pays))
                .caution(cautions.release(aid.name)));
    }
}

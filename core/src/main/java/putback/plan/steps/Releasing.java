package putback.plan.steps;

import java.util.BitSet;
import putback.plan.access.Numbers;
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
        if (!waiting.isEmpty() || aid.holdsAside || isToBeLookedAt(aid)) {
            return false;
        }
        BitSet unsafe = scene.unsafe();
        boolean asideOpen = scene.movedAside.get(aid.part.index())
                && Numbers.anyIn(job.part(aid.part.index()).asideOpens(), unsafe);
        if (asideOpen || Job.isCompressor(aid.name)) {
            return !asideOpen;
        }
        return isHeldAgain(aid, unsafe) || !aid.carriesGroup && isHeldByAnother(aid);
    }

    private boolean isToBeLookedAt(AidsOn.On aid) {
        if (!Job.isCompressor(aid.name)) {
            return false;
        }
        for (int asker : Numbers.in(aid.askers)) {
            if (job.keepsCompressor(job.joint(asker)) && !scene.seen.get(asker)) {
                return true;
            }
        }
        return false;
    }

    /** Held to the car; or, where it hangs on a whole car too, with all its own joints closed. */
    private boolean isHeldAgain(AidsOn.On aid, BitSet unsafe) {
        if (!job.hangsAlways(aid.part.index())) {
            return scene.bearing().heldToBody(aid.part.index());
        }
        BitSet group = (BitSet) aid.pays.clone();
        group.set(aid.part.index());
        for (int joint : Numbers.in(unsafe)) {
            if (Numbers.anyIn(job.joint(joint).joins(), group)) {
                return false;
            }
        }
        return true;
    }

    /** Whether something else holds up what it hangs in one piece with. */
    private boolean isHeldByAnother(AidsOn.On aid) {
        Ties ties = scene.bearing();
        for (AidsOn.On other : aids.all()) {
            if (other != aid
                    && !Job.isCompressor(other.name)
                    && ties.heldTogether(other.part.index(), aid.part.index())) {
                return true;
            }
        }
        return false;
    }

    private void release(AidsOn.On aid) {
        aids.takeOff(aid);
        log.add(Draft.with(Act.RELEASE, aid.part, AidText.off(aid.part, aid.name))
                .aid(aid.name)
                .minutes(charges.back(aid.pays))
                .caution(cautions.release(aid.name)));
    }
}

package putback.plan.steps;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import putback.plan.access.Ties;
import putback.sheet.Joint;
import putback.sheet.Part;

/** Takes off what nothing ties to the car any more. */
final class TakingOff {
    private final Job job;
    private final StepLog log;
    private final AidsOn aids;
    private final ApartScene scene;
    private final Charges charges;

    TakingOff(Job job, StepLog log, AidsOn aids, ApartScene scene, Charges charges) {
        this.job = job;
        this.log = log;
        this.aids = aids;
        this.scene = scene;
        this.charges = charges;
    }

    /**
     * @param before what hung together before the joint was opened
     */
    void after(Joint joint, Ties before) {
        Ties ties = scene.ties();
        BitSet left = new BitSet();
        for (int part = 1; part < job.network.parts(); part++) {
            left.set(part, ties.off(part) && !before.off(part));
        }
        while (!left.isEmpty()) {
            BitSet group = tiedTo(left.nextSetBit(0), left);
            left.andNot(group);
            takeOff(group, joint);
        }
    }

    private BitSet tiedTo(int first, BitSet among) {
        BitSet group = new BitSet();
        for (int part = among.nextSetBit(0); part >= 0; part = among.nextSetBit(part + 1)) {
            group.set(part, scene.ties().tied(first, part));
        }
        return group;
    }

    private void takeOff(BitSet group, Joint joint) {
        releaseStraps(group);
        Part named = GroupText.named(job, group, joint);
        List<Part> others = job.others(group, named);
        log.add(Draft.with(Act.TAKE_OFF, named, "Take off " + GroupText.of(job, group, named, others, false) + ".")
                .together(others)
                .minutes(charges.out(group, job.off))
                .caution(heavy(group)));
    }

    /**
     * A strap that only carried what hung, or what was aside, comes off with it. What hung there with it and stays is to
     * be carried by something else.
     */
    private void releaseStraps(BitSet group) {
        for (AidsOn.On aid : aids.all()) {
            aid.holdsAside &= !group.get(aid.part.index());
            if (group.get(aid.part.index()) && aid.askers.isEmpty() && !Job.isCompressor(aid.name)) {
                aids.takeOff(aid);
                scene.carried.andNot(aid.pays);
                log.add(Draft.with(Act.RELEASE, aid.part, AidText.off(aid.part, aid.name))
                        .aid(aid.name));
            }
        }
    }

    private List<String> heavy(BitSet group) {
        List<String> lines = new ArrayList<>();
        for (Part part : job.heavy()) {
            if (group.get(part.index())) {
                lines.add("The weight of the car shifts as " + Words.the(part)
                        + " leaves: second support in place first.");
            }
        }
        return lines;
    }
}

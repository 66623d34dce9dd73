package putback.plan.steps;

import java.util.BitSet;
import java.util.List;
import putback.plan.access.Ties;
import putback.sheet.Joint;
import putback.sheet.Station;

/** What is said at the first work underneath on a part that was let down on its jack. Common practice, no source. */
final class UnderJack {
    private final Job job;
    private final BitSet said = new BitSet();

    UnderJack(Job job) {
        this.job = job;
    }

    List<String> at(Joint joint, Ties ties, Lowerings lowerings) {
        if (joint.entry().station() != Station.UNDERNEATH || lowerings.isEmpty()) {
            return List.of();
        }
        BitSet down = lowerings.parts();
        down.andNot(said);
        for (int part = down.nextSetBit(0); part >= 0; part = down.nextSetBit(part + 1)) {
            for (int joined : joint.joins()) {
                if (joined != 0 && !ties.off(part) && ties.heldTogether(joined, part)) {
                    said.set(part);
                    return List.of("Blocks or stands under " + Words.the(job.part(part))
                            + " before you go under it: a jack alone holds it up, and jacks sink.");
                }
            }
        }
        return List.of();
    }
}

package putback.plan.steps;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import putback.sheet.Joint;
import putback.sheet.Part;
import putback.sheet.Unit;

/** What happens when all is apart: old against new, and the new made ready. */
final class Turn {
    private final Job job;
    private final StepLog log;
    private final AidsOn aids;
    private final Cautions cautions;

    Turn(Job job, StepLog log, AidsOn aids) {
        this.job = job;
        this.log = log;
        this.aids = aids;
        this.cautions = new Cautions(job);
    }

    void run() {
        for (Unit unit : job.renewal.units()) {
            List<Part> parts = job.parts(unit.parts());
            renew(unit.name(), parts, "");
        }
        for (Part part : job.renewal.parts()) {
            renew(part.name(), List.of(part), "");
        }
        for (Part part : job.renewal.spoiled()) {
            renew(
                    part.name(),
                    List.of(part),
                    " The old one was ruined when " + Words.low(job.renewal.spoiler(part)) + " was opened.");
        }
        log.turnRound();
        prepare();
    }

    private void renew(String name, List<Part> parts, String reason) {
        freeOldSpring(parts);
        Part first = parts.get(0);
        String text = "Lay the new " + Words.low(name) + " beside the old: " + Comparison.of(parts) + reason;
        log.add(Draft.with(Act.RENEW, first, text)
                .together(parts.subList(1, parts.size()))
                .caution(cautions.renew(parts)));
    }

    /** The compressor comes off a spring that does not go back. */
    private void freeOldSpring(List<Part> parts) {
        BitSet renewed = new BitSet();
        for (Part part : parts) {
            renewed.set(part.index());
        }
        for (AidsOn.On aid : aids.all()) {
            if (Job.isCompressor(aid.name) && renewed.get(aid.part.index())) {
                aids.takeOff(aid);
                log.add(Draft.with(
                                Act.RELEASE,
                                aid.part,
                                "Wind the " + aid.name + " off the old " + Words.low(aid.part.name())
                                        + " evenly and take it away.")
                        .aid(aid.name)
                        .caution(List.of("Face out of the spring's line until it is slack.")));
            }
        }
    }

    private void prepare() {
        for (Unit unit : job.renewal.units()) {
            prepare(unit.name(), job.part(unit.parts().get(0)), unit.entry().prepare());
        }
        List<Part> parts = new ArrayList<>(job.renewal.parts());
        parts.addAll(job.renewal.spoiled());
        for (Part part : parts) {
            prepare(part.name(), part, part.entry().prepare());
        }
    }

    /** What is said word for word before a joint on that side is closed is said there only. */
    private boolean isSaidAtAJoint(String item, Part part) {
        for (int index = job.opened.nextSetBit(0); index >= 0; index = job.opened.nextSetBit(index + 1)) {
            Joint joint = job.joint(index);
            if (joint.side() == part.side()
                    && joint.entry().wording().beforeClosing().contains(item)) {
                return true;
            }
        }
        return false;
    }

    private void prepare(String name, Part part, List<String> items) {
        for (String item : items) {
            if (isSaidAtAJoint(item, part)) {
                continue;
            }
            log.add(Draft.with(Act.PREPARE, part, "New " + Words.low(name) + ": " + item + "."));
        }
    }
}

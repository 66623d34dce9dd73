package putback.plan.steps;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import putback.plan.access.Numbers;
import putback.sheet.Joint;
import putback.sheet.Part;
import putback.sheet.SeatedSpring;
import putback.sheet.Unit;

/** What a group of parts in one piece is called, and which of them stands for it. */
final class GroupText {
    private GroupText() {}

    /**
     * A renewed part if there is one, wanted before spoiled; else a spring that leaves with its seats only; else the first
     * that the joint joins.
     */
    static Part named(Job job, BitSet group, Joint joint) {
        for (Unit unit : job.renewal.units()) {
            for (int part : unit.parts()) {
                if (group.get(part)) {
                    return job.part(part);
                }
            }
        }
        for (List<Part> renewed : List.of(job.renewal.parts(), job.renewal.spoiled())) {
            for (Part part : renewed) {
                if (group.get(part.index())) {
                    return part;
                }
            }
        }
        for (SeatedSpring spring : job.springs) {
            if (group.get(spring.spring()) && !Numbers.anyIn(spring.ends(), group)) {
                return job.part(spring.spring());
            }
        }
        BitSet joined = new BitSet();
        for (int part : joint.joins()) {
            joined.set(part, group.get(part));
        }
        return job.part(joined.isEmpty() ? group.nextSetBit(0) : joined.nextSetBit(0));
    }

    /**
     * @param goingOn whether renewed parts are the new ones by now
     */
    static String of(Job job, BitSet group, Part named, List<Part> others, boolean goingOn) {
        for (Unit unit : job.renewal.units()) {
            if (unit.parts().contains(named.index()) && Numbers.allIn(unit.parts(), group)) {
                List<Part> rest = new ArrayList<>();
                for (Part part : others) {
                    if (!unit.parts().contains(part.index())) {
                        rest.add(part);
                    }
                }
                return "the " + (goingOn ? "new " : "") + Words.low(unit.name()) + Words.inOnePiece(rest, named);
            }
        }
        boolean fresh = goingOn && job.renewal.renews(named.index());
        return "the " + (fresh ? "new " : "") + Words.low(named.name()) + Words.inOnePiece(others, named);
    }
}

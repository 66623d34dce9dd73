package putback.plan;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import putback.plan.steps.Act;
import putback.plan.steps.Step;
import putback.sheet.Doubts;
import putback.sheet.Fastener;
import putback.sheet.Joint;

/** What cannot be right about the fasteners that a plan tightens. */
final class FastenerDoubts {
    private FastenerDoubts() {}

    /** The warnings so far, then one for each doubt; what is the same on both sides is said once. */
    static List<String> after(List<String> warnings, List<Step> steps) {
        List<String> all = new ArrayList<>(warnings);
        Set<Fastener> seen = Collections.newSetFromMap(new IdentityHashMap<>());
        for (Step step : steps) {
            Joint joint = step.joint();
            Fastener fastener = step.fastener();
            if (step.act() != Act.TIGHTEN || joint == null || fastener == null || !seen.add(fastener)) {
                continue;
            }
            for (String doubt : Doubts.of(fastener)) {
                String line = joint.entry().name() + ": " + doubt;
                if (!all.contains(line)) {
                    all.add(line);
                }
            }
        }
        return all;
    }
}

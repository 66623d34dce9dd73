package putback.plan;

import java.util.List;
import putback.plan.selection.Wanted;
import putback.sheet.Assembly;

/** Plans the round trip with the least work and set-up on the way apart. */
public final class Planner {
    private Planner() {}

    /** The best plan with its proof, or the joints and parts that lock each other. */
    public static Planned plan(Assembly assembly, Wanted wanted) {
        return new Planned.Locked(List.of(), List.of(), "not built yet: " + assembly.sheet().id() + wanted.ids());
    }
}

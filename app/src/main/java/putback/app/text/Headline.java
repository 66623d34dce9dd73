package putback.app.text;

import java.util.ArrayList;
import java.util.List;
import putback.plan.Plan;
import putback.plan.selection.Target;
import putback.plan.selection.Wanted;
import putback.plan.steps.Step;
import putback.sheet.Part;

/** What is renewed, in one line. */
public final class Headline {
    private static final String LEFT = ", left";
    private static final String RIGHT = ", right";

    private Headline() {}

    /** The names of what is renewed, the two sides of one thing said once. */
    public static String renewed(Plan plan) {
        return renewed(plan.wanted());
    }

    /** The same for what is wanted. */
    public static String renewed(Wanted wanted) {
        List<String> names = new ArrayList<>();
        for (Target target : wanted.targets()) {
            String name = target.name();
            int other =
                    name.endsWith(RIGHT) ? names.indexOf(name.substring(0, name.length() - RIGHT.length()) + LEFT) : -1;
            if (other >= 0) {
                names.set(other, names.get(other) + " and right");
            } else {
                names.add(name);
            }
        }
        return String.join("; ", names);
    }

    /** The part that a step moves. */
    static String part(Step step) {
        Part part = step.part();
        return part == null ? "the whole car" : part.name();
    }
}

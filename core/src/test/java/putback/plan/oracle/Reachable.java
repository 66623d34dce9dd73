package putback.plan.oracle;

import java.util.BitSet;
import putback.plan.Plan;
import putback.sheet.Height;
import putback.sheet.Joint;

/** Whether a joint of a plan can be opened now, by the rules of the design. */
public final class Reachable {
    private Reachable() {}

    /**
     * @param open joints that are open, those beyond the plan too
     */
    public static boolean now(Plan plan, int joint, BitSet open) {
        Rules rules = new Rules(plan.assembly());
        BitSet planned = new BitSet();
        plan.selection().open().forEach(planned::set);
        BitSet aside = new BitSet();
        for (int part : plan.selection().aside()) {
            aside.set(part, rules.canGoAside(part, open));
        }
        Bonds bonds = rules.bonds(open);
        return rules.firstOnesOpen(joint, planned, open)
                && rules.accessible(joint, open, bonds, aside)
                && (!isWorkedOnWheels(rules.joint(joint))
                        || rules.clausesMet(rules.joint(joint).reachOnWheels(), rules.joint(joint), bonds, aside));
    }

    private static boolean isWorkedOnWheels(Joint joint) {
        boolean at =
                joint.entry().height() == Height.ON_WHEELS || joint.fastener().tighten() == Height.ON_WHEELS;
        return joint.saysReachOnWheels() && (at || joint.entry().breakLooseOnWheels());
    }
}

package putback.plan.tools;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import putback.tightening.toolbox.Tightened;
import putback.tightening.toolbox.TorqueWrench;

/**
 * A torque wrench of the toolbox with the steps it serves.
 *
 * @param due why it has to be calibrated first; empty when it has not
 * @param steps numbers of steps, rising
 */
public record WrenchUse(TorqueWrench wrench, List<String> due, List<Integer> steps) {
    public WrenchUse {
        due = List.copyOf(due);
        steps = List.copyOf(steps);
    }

    /** In the order of first use. */
    static List<WrenchUse> of(Map<Integer, Tightened> wrenches) {
        List<WrenchUse> uses = new ArrayList<>();
        for (Map.Entry<Integer, Tightened> entry : wrenches.entrySet()) {
            if (entry.getValue() instanceof Tightened.With with) {
                add(uses, with, entry.getKey());
            }
        }
        return List.copyOf(uses);
    }

    private static void add(List<WrenchUse> uses, Tightened.With with, int step) {
        for (int i = 0; i < uses.size(); i++) {
            WrenchUse use = uses.get(i);
            if (use.wrench.id().equals(with.wrench().id())) {
                List<Integer> steps = new ArrayList<>(use.steps);
                steps.add(step);
                uses.set(i, new WrenchUse(use.wrench, use.due, steps));
                return;
            }
        }
        uses.add(new WrenchUse(with.wrench(), with.due(), List.of(step)));
    }

    /** Such as {@code W3 (large), 40 to 200 N·m (30 to 148 lbf·ft)}. */
    public String text() {
        return wrench.text() + ", " + wrench.rangeText();
    }
}

package putback.plan.tools;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import putback.plan.steps.Step;
import putback.quantity.Torque;

/**
 * What a plan tightens to a torque, whatever wrenches there are.
 *
 * @param least the smallest torque that is asked for
 * @param most the largest one
 * @param steps numbers of the steps that tighten to a torque, rising, at least one
 * @param angled numbers of those of them that an angle follows, rising
 */
public record TorqueNeed(Torque least, Torque most, List<Integer> steps, List<Integer> angled) {
    public TorqueNeed {
        steps = List.copyOf(steps);
        angled = List.copyOf(angled);
    }

    /** Of all steps of a plan; null where none of them has a torque. */
    public static @Nullable TorqueNeed of(List<Step> plan) {
        Torque least = null;
        Torque most = null;
        List<Integer> steps = new ArrayList<>();
        List<Integer> angled = new ArrayList<>();
        for (Step step : plan) {
            Limits limits = Limits.of(step);
            if (limits == null) {
                continue;
            }
            Torque torque = limits.torque();
            least = least == null || torque.newtonMetres() < least.newtonMetres() ? torque : least;
            most = most == null || torque.newtonMetres() > most.newtonMetres() ? torque : most;
            steps.add(step.number());
            if (limits.angle()) {
                angled.add(step.number());
            }
        }
        return least == null || most == null ? null : new TorqueNeed(least, most, steps, angled);
    }
}

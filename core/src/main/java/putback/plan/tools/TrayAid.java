package putback.plan.tools;

import java.util.List;
import putback.tightening.toolbox.Have;

/**
 * An aid of a plan, and whether the garage has enough of it.
 *
 * @param atOnce how many are on the car at one time, at least 1
 * @param steps numbers of the steps that put it on, rising
 */
public record TrayAid(String name, int atOnce, List<Integer> steps, Have have) {
    public TrayAid {
        steps = List.copyOf(steps);
    }
}

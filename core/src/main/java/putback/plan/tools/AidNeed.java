package putback.plan.tools;

import java.util.List;

/**
 * An aid of a plan, whoever has it.
 *
 * @param atOnce how many are on the car at one time, at least 1
 * @param steps numbers of the steps that put it on, rising
 */
public record AidNeed(String name, int atOnce, List<Integer> steps) {
    public AidNeed {
        steps = List.copyOf(steps);
    }
}

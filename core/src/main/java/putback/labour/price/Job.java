package putback.labour.price;

import putback.plan.selection.Wanted;

/**
 * One of several jobs on a car.
 *
 * @param name as it stands on the estimate
 */
public record Job(String name, Wanted wanted) {}

package putback.labour.time;

/**
 * How much of a job's scatter comes from one step, or from the car.
 *
 * @param id of the step; empty for the factor common to the whole car
 * @param share of the variance, 0 to 1; all shares together are 1
 */
public record Share(String id, double share) {}

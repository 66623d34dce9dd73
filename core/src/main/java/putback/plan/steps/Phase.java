package putback.plan.steps;

/** Which rail of the ladder a step stands on. */
public enum Phase {
    APART,
    TOGETHER
}

package putback.plan;

import putback.quantity.Minutes;

/**
 * What a plan minimises, without its steps.
 *
 * @param objective work and set-up on the way apart, as {@link Plan#objective()}
 * @param bound no plan has a lower objective than this
 * @param total work and all set-ups, apart and together, as {@link Plan#total()}
 */
public record PlanCost(Minutes objective, Minutes bound, Minutes total) {
    /** Whether no plan has a lower objective. */
    public boolean proven() {
        return bound.compareTo(objective) >= 0;
    }
}

package putback.ledger;

import org.jspecify.annotations.Nullable;

/**
 * How the plan closes a joint.
 *
 * @param tight how tight; null where it is not tightened at all
 * @param newFastener whether a new one is fitted
 * @param secondLook whether somebody looks again
 * @param count how many fasteners, at least 1
 */
public record Fixing(PlanStep.@Nullable Tight tight, boolean newFastener, boolean secondLook, int count) {
    /** Of which nothing is known but that it is opened. */
    static final Fixing PLAIN = new Fixing(null, false, false, 1);

    /** Whether it is tightened. */
    public boolean threaded() {
        return tight != null;
    }

    /** With what one more step says about the joint. */
    Fixing with(PlanStep step) {
        return switch (step.did()) {
            case START -> new Fixing(tight, newFastener || step.newFastener(), secondLook, most(step));
            case TIGHTEN -> new Fixing(step.tight(), newFastener || step.newFastener(), secondLook, most(step));
            case SECOND_LOOK -> new Fixing(tight, newFastener, true, count);
            default -> new Fixing(tight, newFastener, secondLook, most(step));
        };
    }

    private int most(PlanStep step) {
        return Math.max(count, step.count());
    }
}

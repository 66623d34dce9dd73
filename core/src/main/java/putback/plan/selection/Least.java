package putback.plan.selection;

import org.jspecify.annotations.Nullable;

/**
 * What was found of the least work among choices of a kind.
 *
 * @param choice the best one found; null when none was
 * @param bound no choice of the kind that is below the limit asked for has a lower rank; {@link LeastWork#NO_LIMIT} when
 *     there is none at all
 */
public record Least(@Nullable Choice choice, long bound) {
    /** Whether nothing better can turn up. */
    public boolean isProven() {
        return choice == null ? bound >= LeastWork.NO_LIMIT : bound >= choice.rank();
    }
}

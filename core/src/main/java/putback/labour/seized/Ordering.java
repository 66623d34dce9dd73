package putback.labour.seized;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The best order of attempts, by cost over chance. First counts that the fastener comes undone, then the cost.
 *
 * <p>Order: of two neighbours a before b costs ca + (1 - pa) cb, b before a costs cb + (1 - pb) ca; the first is no dearer
 * exactly when ca / pa is at most cb / pb. So no order is cheaper than by c / p (Mitten 1960).
 *
 * <p>Choice: let V be what the rest of the row costs. An attempt in front of it pays exactly when c + (1 - p) V is below
 * V, which is c / p below V. A certain attempt's c / p is its cost, so the cheapest certain one ends the row, and what
 * has a larger c / p than that never pays. What has a smaller one always does: in a row by c / p the cost of the rest is
 * a mean of larger ratios, hence larger than the ratio before it. Sorting is all, n log n.
 *
 * <p>Source: MITTEN60, EQC04.
 */
final class Ordering {
    private static final MathContext DIGITS = new MathContext(100, RoundingMode.HALF_EVEN);

    private Ordering() {}

    /** An attempt with sixty times its cost. */
    private record Weighed(Attempt attempt, BigDecimal sixtyfold) {
        int compareRatio(Weighed other) {
            return sixtyfold.multiply(other.attempt.chance()).compareTo(other.sixtyfold.multiply(attempt.chance()));
        }
    }

    /** Of equal ratios a certain one comes first, since nothing after it can pay; then the shorter one, then by id. */
    private static final Comparator<Weighed> BY_RATIO = ((Comparator<Weighed>) Weighed::compareRatio)
            .thenComparing(one -> !one.attempt.isCertain())
            .thenComparing(one -> one.attempt.minutes())
            .thenComparing(one -> one.attempt.id());

    static Row row(Seized seized) {
        List<LeftOut> leftOut = new ArrayList<>();
        List<Weighed> candidates = new ArrayList<>();
        for (Attempt attempt : seized.attempts()) {
            LeftOut out = Suitability.leftOut(attempt, seized);
            if (out == null) {
                candidates.add(new Weighed(attempt, attempt.sixtyfoldCost(seized.ratePerHour())));
            } else {
                leftOut.add(out);
            }
        }
        candidates.sort(BY_RATIO);
        Reckoning reckoning = new Reckoning(DIGITS);
        Attempt last = null;
        for (Weighed one : candidates) {
            if (last == null) {
                reckoning.add(one.attempt, one.sixtyfold);
                last = one.attempt.isCertain() ? one.attempt : null;
            } else {
                leftOut.add(neverPays(one.attempt, last));
            }
        }
        return reckoning.row(leftOut, seized.nearby());
    }

    private static LeftOut neverPays(Attempt attempt, @Nullable Attempt last) {
        String sure = last == null ? "" : last.id();
        return new LeftOut(attempt, "for its chance it saves nothing over " + sure + ", which is sure to work");
    }
}

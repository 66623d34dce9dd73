package putback.labour.seized;

import java.math.BigDecimal;
import java.util.List;
import putback.quantity.Minutes;

/**
 * What to try one after the other, until one works.
 *
 * @param tries in order
 * @param leftOut what is not tried, and why
 * @param expectedMinutes spent on average
 * @param expectedCost time at the rate, damage and scrap, on average; not rounded
 * @param p90Minutes in nine cases of ten no more than this is spent
 * @param leftChance that none of them works, 0 to 1
 */
public record Row(
        List<Try> tries,
        List<LeftOut> leftOut,
        BigDecimal expectedMinutes,
        BigDecimal expectedCost,
        Minutes p90Minutes,
        BigDecimal leftChance) {
    public Row {
        tries = List.copyOf(tries);
        leftOut = List.copyOf(leftOut);
    }

    /** Whether the last of them always works. */
    public boolean isCertain() {
        return leftChance.signum() == 0;
    }
}

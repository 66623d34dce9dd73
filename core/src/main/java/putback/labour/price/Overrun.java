package putback.labour.price;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * By how much a price may pass the estimate before the customer has to be asked again.
 *
 * @param amount in the place's currency; null when nothing is said
 * @param percent of the estimate; null when nothing is said
 * @param whicheverIsLess which of the two counts where both are said
 * @param most no more than this in any case; null when nothing is said
 */
public record Overrun(
        @Nullable BigDecimal amount,
        @Nullable BigDecimal percent,
        boolean whicheverIsLess,
        @Nullable BigDecimal most) {
    /** Nobody says anything. */
    public static final Overrun UNKNOWN = new Overrun(null, null, false, null);

    /** Up to which total the first approval holds; null when nothing is said. */
    public @Nullable BigDecimal upTo(BigDecimal total) {
        BigDecimal share = percent == null ? null : Money.percent(total, percent);
        BigDecimal more = share;
        if (amount != null) {
            more = share == null || whicheverIsLess == amount.compareTo(share) <= 0 ? amount : share;
        }
        if (more == null) {
            return null;
        }
        return Money.rounded(total.add(most == null ? more : more.min(most)));
    }
}

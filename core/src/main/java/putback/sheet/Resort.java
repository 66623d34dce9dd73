package putback.sheet;

import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;
import putback.quantity.Minutes;

/**
 * One way of undoing a fastener that will not move.
 *
 * @param chance that it works, 0 to 1
 * @param breakChance that it damages something, 0 to 1
 * @param breakPrice what that costs; null when nothing
 * @param scraps price of what it always destroys; null when nothing
 * @param when which ways of refusing it answers, empty for all
 */
public record Resort(
        String id,
        Minutes minutes,
        double chance,
        double breakChance,
        @Nullable BigDecimal breakPrice,
        @Nullable BigDecimal scraps,
        List<String> when) {
    public Resort {
        when = List.copyOf(when);
    }
}

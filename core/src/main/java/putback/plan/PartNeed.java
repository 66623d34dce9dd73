package putback.plan;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * Something to have on the shelf before starting.
 *
 * @param id of a part, a unit, or a joint whose fasteners are single-use
 * @param count how many to buy
 * @param price of all of them in the garage's currency; null when not given
 * @param reason such as {@code renew}, {@code spoiled by ...} or {@code single-use}
 */
public record PartNeed(
        String id, String name, int count, @Nullable BigDecimal price, String reason) {}

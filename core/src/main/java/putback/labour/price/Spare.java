package putback.labour.price;

import java.math.BigDecimal;

/**
 * Something to have on the shelf because it may be needed.
 *
 * @param id of the joint whose fastener it is
 * @param chance that at least one is needed, 0 to 1
 * @param count how many to have
 * @param price of one
 */
public record Spare(String id, String name, double chance, int count, BigDecimal price) {}

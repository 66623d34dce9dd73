package putback.labour.price;

import java.math.BigDecimal;

/**
 * One of the figures that are told to a customer.
 *
 * @param chance that it takes no longer, 0 to 1
 * @param minutes whole ones
 * @param total in the garage's currency, tax included
 */
public record Figure(double chance, long minutes, BigDecimal total) {}

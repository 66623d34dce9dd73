package putback.labour.price;

import java.math.BigDecimal;
import java.math.MathContext;

/** How long one may work before a price is above what was agreed. */
final class Ceiling {
    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);
    private static final BigDecimal SIXTY = BigDecimal.valueOf(60);

    private Ceiling() {}

    /**
     * Minutes of work at which labour, parts and tax together are the ceiling; below 0 where parts and their tax are
     * above it by themselves. Rounding to hundredths is not counted.
     *
     * @param parts with markup, sundries and subcontracted work, without tax
     */
    static double minutes(BigDecimal ceiling, BigDecimal parts, Terms terms) {
        BigDecimal net = ceiling.multiply(HUNDRED).divide(HUNDRED.add(terms.taxPercent()), MathContext.DECIMAL64);
        return net.subtract(parts)
                .multiply(SIXTY)
                .divide(terms.ratePerHour(), MathContext.DECIMAL64)
                .doubleValue();
    }
}

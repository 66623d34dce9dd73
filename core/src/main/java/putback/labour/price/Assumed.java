package putback.labour.price;

import java.math.BigDecimal;
import java.math.MathContext;

/** What an estimate takes for granted, all of it judgement (common practice, no source); see docs/decisions/0007. */
public final class Assumed {
    /** A new bolt and nut, in the garage's currency. */
    public static final BigDecimal FASTENER_PRICE = new BigDecimal("5.00");

    /** What a part is kept for that was not needed: tied money and the way back, as a share of its price. */
    static final double LYING = 0.25;

    /** How long a car is in the way when a part is lacking, in minutes of work. */
    static final double WAITING_MINUTES = 60;

    /** The resort that works better when it is put on the night before. */
    static final String SOAKED = "penetrant";

    private Assumed() {}

    /** A night counts like a second try by itself: 1 - (1 - chance)^2. */
    static BigDecimal overnight(BigDecimal chance) {
        BigDecimal fails = BigDecimal.ONE.subtract(chance);
        return BigDecimal.ONE.subtract(fails.multiply(fails)).round(MathContext.DECIMAL64);
    }
}

package putback.labour.price;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Amounts in the garage's currency, which has hundredths. */
public final class Money {
    public static final BigDecimal ZERO = new BigDecimal("0.00");
    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);
    private static final BigDecimal SIXTY = BigDecimal.valueOf(60);
    private static final int PLACES = 2;

    private Money() {}

    /** Half up, away from zero, to the hundredth. */
    public static BigDecimal rounded(BigDecimal amount) {
        return amount.setScale(PLACES, RoundingMode.HALF_UP);
    }

    /** A share of an amount, rounded once. */
    public static BigDecimal percent(BigDecimal amount, BigDecimal percent) {
        return rounded(amount.multiply(percent).divide(HUNDRED));
    }

    /** What minutes cost at a rate, rounded once. */
    public static BigDecimal ofMinutes(long minutes, BigDecimal ratePerHour) {
        return ratePerHour.multiply(BigDecimal.valueOf(minutes)).divide(SIXTY, PLACES, RoundingMode.HALF_UP);
    }
}

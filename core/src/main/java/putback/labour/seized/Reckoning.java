package putback.labour.seized;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import putback.quantity.Minutes;

/** Adds up a row from its first attempt to its last. Exact as long as the digits hold; beyond, rounded half to even. */
final class Reckoning {
    private static final BigDecimal SIXTY = BigDecimal.valueOf(60);
    private static final BigDecimal TENTH = new BigDecimal("0.1");

    private final MathContext digits;
    private final List<Try> tries = new ArrayList<>();
    private BigDecimal left = BigDecimal.ONE;
    private BigDecimal minutes = BigDecimal.ZERO;
    private BigDecimal sixtyfold = BigDecimal.ZERO;
    private Minutes elapsed = Minutes.ZERO;
    private @Nullable Minutes p90;

    Reckoning(MathContext digits) {
        this.digits = digits;
    }

    void add(Attempt attempt, BigDecimal sixtyfoldCost) {
        elapsed = elapsed.plus(attempt.minutes());
        BigDecimal cost = sixtyfoldCost.divide(SIXTY, digits);
        tries.add(new Try(attempt, cost, left, elapsed, cost.divide(attempt.chance(), digits)));
        minutes = minutes.add(left.multiply(attempt.minutes().decimal()), digits);
        sixtyfold = sixtyfold.add(left.multiply(sixtyfoldCost), digits);
        left = left.multiply(BigDecimal.ONE.subtract(attempt.chance()), digits);
        if (p90 == null && left.compareTo(TENTH) <= 0) {
            p90 = elapsed;
        }
    }

    Row row(List<LeftOut> leftOut, List<Nearby> nearby) {
        return new Row(
                tries,
                leftOut,
                minutes,
                sixtyfold.divide(SIXTY, digits),
                p90 == null ? elapsed : p90,
                left.setScale(Math.min(left.scale(), digits.getPrecision()), RoundingMode.HALF_EVEN),
                nearby);
    }
}

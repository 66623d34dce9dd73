package putback.quantity;

import java.math.BigDecimal;

/**
 * How much force a spring answers a millimetre with.
 *
 * @param newtonsPerMillimetre in N/mm, finite
 */
public record SpringRate(double newtonsPerMillimetre) {
    public SpringRate {
        Rounding.finite(newtonsPerMillimetre);
    }

    /** Reads {@code 28 N/mm}; never throws. */
    public static Parsed<SpringRate> parse(String text) {
        Parsed<BigDecimal> number = Quantities.parse(text, Kind.SPRING_RATE);
        return number instanceof Parsed.Value<BigDecimal> one
                ? new Parsed.Value<>(new SpringRate(one.value().doubleValue()))
                : new Parsed.Refused<>(number.refusal());
    }
}

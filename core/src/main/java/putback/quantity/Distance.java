package putback.quantity;

import java.math.BigDecimal;

/**
 * A distance driven.
 *
 * @param kilometres in km, finite
 */
public record Distance(double kilometres) {
    public Distance {
        Rounding.finite(kilometres);
    }

    /** Reads {@code 120000 km}; never throws. */
    public static Parsed<Distance> parse(String text) {
        Parsed<BigDecimal> number = Quantities.parse(text, Kind.DISTANCE);
        return number instanceof Parsed.Value<BigDecimal> one
                ? new Parsed.Value<>(new Distance(one.value().doubleValue()))
                : new Parsed.Refused<>(number.refusal());
    }
}

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

    /** One mile in kilometres, exact by definition. */
    private static final double KILOMETRES_PER_MILE = 1.609344;

    /** Reads {@code 120000 km} or {@code 75000 mi}; never throws. */
    public static Parsed<Distance> parse(String text) {
        Parsed<BigDecimal> number = Quantities.parse(text, Kind.DISTANCE);
        return number instanceof Parsed.Value<BigDecimal> one
                ? new Parsed.Value<>(new Distance(one.value().doubleValue()))
                : new Parsed.Refused<>(number.refusal());
    }

    /** Both units, whole: {@code 90000 km (55923 mi)}. */
    public String text() {
        return Rounding.nearest(kilometres, 0) + " km (" + Rounding.nearest(kilometres / KILOMETRES_PER_MILE, 0)
                + " mi)";
    }
}

package putback.quantity;

import java.math.BigDecimal;

/**
 * An angle.
 *
 * @param degrees in degrees, finite
 */
public record Angle(double degrees) {
    private static final int PLACES = 2;
    private static final BigDecimal MOST = BigDecimal.valueOf(1_000_000);

    public Angle {
        Rounding.finite(degrees);
    }

    /** Reads {@code 90 deg}, {@code -0.5°}, {@code 1.2 rad}, {@code 0°15'}; never throws. */
    public static Parsed<Angle> parse(String text) {
        Parsed<BigDecimal> number = Quantities.parse(text, Kind.ANGLE);
        if (number instanceof Parsed.Refused) {
            BigDecimal minutes = DegreesMinutes.parse(text);
            number = minutes == null || minutes.abs().compareTo(MOST) > 0 ? number : new Parsed.Value<>(minutes);
        }
        return number instanceof Parsed.Value<BigDecimal> one
                ? new Parsed.Value<>(new Angle(one.value().doubleValue()))
                : new Parsed.Refused<>(number.refusal());
    }

    public double radians() {
        return Math.toRadians(degrees);
    }

    /** For example {@code 90°}, to a hundredth. */
    public String text() {
        return Rounding.nearest(degrees, PLACES) + "°";
    }
}

package putback.quantity;

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
        return Quantities.parse(text, Kind.DISTANCE).map(value -> new Distance(value.doubleValue()));
    }
}

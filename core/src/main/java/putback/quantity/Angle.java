package putback.quantity;

/**
 * An angle.
 *
 * @param degrees in degrees, finite
 */
public record Angle(double degrees) {
    private static final int PLACES = 2;

    public Angle {
        Rounding.finite(degrees);
    }

    /** Reads {@code 90 deg}, {@code -0.5°}, {@code 1.2 rad}; never throws. */
    public static Parsed<Angle> parse(String text) {
        return Quantities.parse(text, Kind.ANGLE).map(value -> new Angle(value.doubleValue()));
    }

    public double radians() {
        return Math.toRadians(degrees);
    }

    /** For example {@code 90°}, to a hundredth. */
    public String text() {
        return Rounding.nearest(degrees, PLACES) + "°";
    }
}

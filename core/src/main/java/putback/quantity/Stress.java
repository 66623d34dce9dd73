package putback.quantity;

/**
 * Force on an area inside a material.
 *
 * @param megapascals in MPa, finite
 */
public record Stress(double megapascals) {
    public Stress {
        Rounding.finite(megapascals);
    }

    /** Reads {@code 640 MPa}; never throws. */
    public static Parsed<Stress> parse(String text) {
        return Quantities.parse(text, Kind.STRESS).map(value -> new Stress(value.doubleValue()));
    }
}

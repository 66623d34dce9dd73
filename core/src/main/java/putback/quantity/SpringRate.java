package putback.quantity;

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
        return Quantities.parse(text, Kind.SPRING_RATE).map(value -> new SpringRate(value.doubleValue()));
    }
}

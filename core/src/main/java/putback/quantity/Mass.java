package putback.quantity;

/**
 * A mass.
 *
 * @param kilograms in kg, finite
 */
public record Mass(double kilograms) {
    public Mass {
        Rounding.finite(kilograms);
    }

    /** Reads {@code 1.5 kg}, {@code 3.3 lb}; never throws. */
    public static Parsed<Mass> parse(String text) {
        return Quantities.parse(text, Kind.MASS).map(value -> new Mass(value.doubleValue()));
    }
}

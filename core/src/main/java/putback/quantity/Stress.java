package putback.quantity;

import java.math.BigDecimal;

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
        Parsed<BigDecimal> number = Quantities.parse(text, Kind.STRESS);
        return number instanceof Parsed.Value<BigDecimal> one
                ? new Parsed.Value<>(new Stress(one.value().doubleValue()))
                : new Parsed.Refused<>(number.refusal());
    }
}

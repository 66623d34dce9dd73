package putback.quantity;

import java.math.BigDecimal;

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
        Parsed<BigDecimal> number = Quantities.parse(text, Kind.MASS);
        return number instanceof Parsed.Value<BigDecimal> one
                ? new Parsed.Value<>(new Mass(one.value().doubleValue()))
                : new Parsed.Refused<>(number.refusal());
    }
}

package putback.quantity;

import java.math.BigDecimal;

/**
 * A force.
 *
 * @param newtons in N, finite
 */
public record Force(double newtons) {
    /** One pound-force in newtons: 0.45359237 kg x 9.80665 m/s2, exact by definition. */
    public static final double NEWTONS_PER_POUND_FORCE = 4.4482216152605;

    public Force {
        Rounding.finite(newtons);
    }

    /** Reads {@code 50 kN}, {@code 50000 N}, {@code 11240 lbf}; never throws. */
    public static Parsed<Force> parse(String text) {
        Parsed<BigDecimal> number = Quantities.parse(text, Kind.FORCE);
        return number instanceof Parsed.Value<BigDecimal> one
                ? new Parsed.Value<>(new Force(one.value().doubleValue()))
                : new Parsed.Refused<>(number.refusal());
    }

    public double kilonewtons() {
        return newtons / 1000;
    }

    /** Both units: {@code 50 kN (11240 lbf)}. */
    public String text() {
        double poundForce = newtons / NEWTONS_PER_POUND_FORCE;
        return Rounding.nearest(kilonewtons(), Math.max(1, Rounding.places(kilonewtons()))) + " kN ("
                + Rounding.nearest(poundForce, Rounding.places(poundForce)) + " lbf)";
    }
}

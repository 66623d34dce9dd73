package putback.quantity;

import java.math.BigDecimal;

/**
 * A turning moment.
 *
 * @param newtonMetres in N·m, finite
 */
public record Torque(double newtonMetres) {
    /** One pound-force foot in newton metres: 0.3048 m x 0.45359237 kg x 9.80665 m/s2, exact by definition. */
    public static final double NEWTON_METRES_PER_POUND_FOOT = 1.3558179483314004;

    public static final Torque ZERO = new Torque(0);

    private static final int FINEST = 2;

    public Torque {
        Rounding.finite(newtonMetres);
    }

    /** Reads {@code 98 N·m}, {@code 72 lbf·ft} and their other spellings; never throws. */
    public static Parsed<Torque> parse(String text) {
        Parsed<BigDecimal> number = Quantities.parse(text, Kind.TORQUE);
        return number instanceof Parsed.Value<BigDecimal> one
                ? new Parsed.Value<>(new Torque(one.value().doubleValue()))
                : new Parsed.Refused<>(number.refusal());
    }

    /** The same moment in lbf·ft. */
    public double poundFeet() {
        return newtonMetres / NEWTON_METRES_PER_POUND_FOOT;
    }

    /** Both units, newton metres first: {@code 98 N·m (72 lbf·ft)}. */
    public String text() {
        return inNewtonMetres() + " (" + inPoundFeet() + ")";
    }

    /** Both units, pound-feet first: {@code 72 lbf·ft (98 N·m)}. */
    public String textPoundFeetFirst() {
        return inPoundFeet() + " (" + inNewtonMetres() + ")";
    }

    /**
     * What a reading may be, in both units: {@code 92 to 104 N·m (68 to 76 lbf·ft)}. The limits are rounded inward, so
     * that nothing shown as allowed is outside.
     */
    public static String windowText(Torque low, Torque high) {
        return span(low.newtonMetres, high.newtonMetres) + " N·m (" + span(low.poundFeet(), high.poundFeet())
                + " lbf·ft)";
    }

    /** From one torque to another, each rounded to the nearest, in both units: {@code 67 to 112 N·m (49 to 83 lbf·ft)}. */
    public static String spanText(Torque low, Torque high) {
        return figure(low.newtonMetres) + " to " + figure(high.newtonMetres) + " N·m (" + figure(low.poundFeet())
                + " to " + figure(high.poundFeet()) + " lbf·ft)";
    }

    /** A bare number, rounded about as fine as a wrench can be read. */
    public static String figure(double value) {
        return Rounding.nearest(value, Rounding.places(value));
    }

    private static String span(double low, double high) {
        int places = Math.max(Rounding.places(low), Rounding.places(high));
        while (places < FINEST && high - low < 2 * Math.pow(10, -places)) {
            places++;
        }
        return Rounding.up(low, places) + " to " + Rounding.down(high, places);
    }

    private String inNewtonMetres() {
        return Rounding.nearest(newtonMetres, Math.max(1, Rounding.places(newtonMetres))) + " N·m";
    }

    private String inPoundFeet() {
        return Rounding.nearest(poundFeet(), Rounding.places(poundFeet())) + " lbf·ft";
    }
}

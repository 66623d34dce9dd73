package putback.quantity;

import java.math.BigDecimal;

/**
 * A length.
 *
 * @param millimetres in mm, finite
 */
public record Length(double millimetres) {
    /** One inch in millimetres, exact by definition. */
    public static final double MILLIMETRES_PER_INCH = 25.4;

    private static final int FINEST_INCH_MARK = 32;
    private static final double SAME = 1e-6;

    public Length {
        Rounding.finite(millimetres);
    }

    /** Reads {@code 18 mm}, {@code 9/16 in} and the like; never throws. */
    public static Parsed<Length> parse(String text) {
        Parsed<BigDecimal> number = Quantities.parse(text, Kind.LENGTH);
        return number instanceof Parsed.Value<BigDecimal> one
                ? new Parsed.Value<>(new Length(one.value().doubleValue()))
                : new Parsed.Refused<>(number.refusal());
    }

    public double inches() {
        return millimetres / MILLIMETRES_PER_INCH;
    }

    /** Both units: {@code 310 mm (12.2 in)}. */
    public String text() {
        return Rounding.nearest(millimetres, 2) + " mm ("
                + Rounding.nearest(inches(), Math.max(1, Rounding.places(inches()))) + " in)";
    }

    /** The name of a tool's size: {@code 18 mm}, or {@code 9/16 in} where only an inch size fits. */
    public String acrossFlats() {
        double halves = millimetres * 2;
        if (Math.abs(halves - Math.rint(halves)) < SAME) {
            return Rounding.nearest(millimetres, 1) + " mm";
        }
        double marks = inches() * FINEST_INCH_MARK;
        return marks > 0 && Math.abs(marks - Math.rint(marks)) < SAME
                ? fraction((int) Math.rint(marks)) + " in"
                : Rounding.nearest(millimetres, 2) + " mm";
    }

    private static String fraction(int marks) {
        int above = marks % FINEST_INCH_MARK;
        int below = FINEST_INCH_MARK;
        while (above > 0 && above % 2 == 0) {
            above /= 2;
            below /= 2;
        }
        int whole = marks / FINEST_INCH_MARK;
        String part = above == 0 ? "" : above + "/" + below;
        return whole == 0 ? part : part.isEmpty() ? "" + whole : whole + " " + part;
    }
}

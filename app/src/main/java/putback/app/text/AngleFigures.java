package putback.app.text;

import java.util.Locale;
import putback.quantity.DegreesMinutes;

/** Angles as a mechanic reads them: in degrees, and in degrees and minutes. */
public final class AngleFigures {
    private static final int SIXTEENTHS = 16;

    private static final double SAME = 0.04;

    /** A fraction that is further off than this share of the turn is not offered as about the same. */
    private static final double NEAR = 0.12;

    private AngleFigures() {}

    /** {@code -0.50 deg (-0°30')}. */
    public static String both(double degrees) {
        return plain(degrees, 2) + " deg (" + DegreesMinutes.text(degrees) + ")";
    }

    /** The same without the unit, in columns. */
    static String column(double degrees) {
        return String.format(Locale.ROOT, "%6s %9s", plain(degrees, 2), "(" + DegreesMinutes.text(degrees) + ")");
    }

    /** Without the sign of a zero. */
    public static String plain(double value, int places) {
        String text = String.format(Locale.ROOT, "%." + places + "f", value);
        return text.startsWith("-") && text.chars().noneMatch(c -> c >= '1' && c <= '9') ? text.substring(1) : text;
    }

    /** Turns as they are turned by hand, to the nearest sixteenth or between two; empty where that says nothing more. */
    static String fraction(double turns) {
        double sixteenths = turns * SIXTEENTHS;
        long near = Math.round(sixteenths);
        boolean exact = Math.abs(sixteenths - near) < SAME;
        if (near % SIXTEENTHS == 0 && exact) {
            return "";
        }
        if (exact) {
            return " (" + named(near) + ")";
        }
        if (near > 0 && Math.abs(sixteenths - near) <= NEAR * sixteenths) {
            return " (about " + named(near) + ")";
        }
        long below = (long) Math.floor(sixteenths);
        return below == 0
                ? " (less than " + named(1) + ")"
                : " (between " + named(below) + " and " + named(below + 1) + ")";
    }

    private static String named(long sixteenths) {
        long whole = sixteenths / SIXTEENTHS;
        long above = sixteenths % SIXTEENTHS;
        long below = SIXTEENTHS;
        while (above > 0 && above % 2 == 0) {
            above /= 2;
            below /= 2;
        }
        String part = above == 0 ? "" : above + "/" + below;
        return whole == 0 ? part : part.isEmpty() ? "" + whole : whole + " " + part;
    }
}

package putback.app.text;

import java.util.Locale;
import putback.quantity.DegreesMinutes;

/** Angles as a mechanic reads them: in degrees, and in degrees and minutes. */
public final class AngleFigures {
    private static final String[] EIGHTHS = {"", "1/8", "1/4", "3/8", "1/2", "5/8", "3/4", "7/8"};

    private static final double SAME = 0.04;

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

    /** Turns to the nearest eighth, as they are turned by hand; empty where that says nothing more. */
    static String eighths(double turns) {
        long eighths = Math.round(turns * 8);
        String part = EIGHTHS[(int) (eighths % 8)];
        boolean exact = Math.abs(turns * 8 - eighths) < SAME;
        if (eighths == 0 || (exact && part.isEmpty())) {
            return "";
        }
        long whole = eighths / 8;
        String both = whole == 0 ? part : part.isEmpty() ? "" + whole : whole + " " + part;
        return exact ? " (" + both + ")" : " (about " + both + ")";
    }
}

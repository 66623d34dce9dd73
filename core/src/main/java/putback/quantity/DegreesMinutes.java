package putback.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Angles in degrees and minutes of arc, as makers' tables print them: {@code 0°09'}, {@code -1 deg 30 min}, {@code 15'}. */
public final class DegreesMinutes {
    private static final BigDecimal SIXTY = BigDecimal.valueOf(60);

    private DegreesMinutes() {}

    /** In degrees; null where it is not written so. */
    static @Nullable BigDecimal parse(String text) {
        String plain = text.strip().replace('−', '-').replace('–', '-').replace('º', '°');
        boolean negative = plain.startsWith("-");
        String size = negative || plain.startsWith("+") ? plain.substring(1).strip() : plain;
        int mark = size.indexOf('°');
        int degrees = mark >= 0 ? mark : size.indexOf("deg");
        int after = degrees < 0 ? 0 : degrees + (mark >= 0 ? 1 : 3);
        BigDecimal whole = degrees < 0 ? BigDecimal.ZERO : digits(size.substring(0, degrees), 0);
        BigDecimal minutes = minutes(size.substring(after).strip(), degrees >= 0);
        if (whole == null || minutes == null || (degrees >= 0 && minutes.compareTo(SIXTY) >= 0)) {
            return null;
        }
        BigDecimal value = whole.add(minutes.divide(SIXTY, MathContext.DECIMAL128));
        return negative ? value.negate() : value;
    }

    private static @Nullable BigDecimal minutes(String text, boolean afterDegrees) {
        for (String mark : new String[] {"'", "′", "’"}) {
            if (text.endsWith(mark)) {
                return digits(text.substring(0, text.length() - mark.length()), 2);
            }
        }
        return afterDegrees && text.endsWith("min") ? digits(text.substring(0, text.length() - 3), 2) : null;
    }

    private static @Nullable BigDecimal digits(String text, int places) {
        NumberText number = NumberText.of(text.strip());
        boolean plain = number != null
                && number.rest().isEmpty()
                && !number.isFraction()
                && number.numerator().signum() >= 0
                && number.numerator().scale() <= places;
        return plain && number != null && Character.isDigit(text.strip().charAt(0)) ? number.numerator() : null;
    }

    /** To the nearest minute: {@code -1°05'}. */
    public static String text(double degrees) {
        long minutes = Math.round(Math.abs(degrees) * 60);
        String sign = minutes == 0 ? "" : degrees < 0 ? "-" : "";
        return String.format(Locale.ROOT, "%s%d°%02d'", sign, minutes / 60, minutes % 60);
    }
}

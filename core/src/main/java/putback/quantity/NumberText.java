package putback.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import org.jspecify.annotations.Nullable;

/**
 * A number at the start of a text, and what is left after it.
 *
 * @param numerator exact
 * @param denominator 1 unless it was written as a fraction
 * @param rest without spaces around it
 */
record NumberText(BigDecimal numerator, BigDecimal denominator, String rest) {
    private static final int MOST_DIGITS = 20;

    /** A comma before three digits may stand for thousands or for a decimal point: nobody can tell, so it is refused. */
    private static final int THOUSANDS = 3;

    boolean isFraction() {
        return denominator.compareTo(BigDecimal.ONE) != 0;
    }

    /** The number itself, exact where it ends as a decimal, else to 34 digits. */
    BigDecimal value() {
        return isFraction() ? numerator.divide(denominator, MathContext.DECIMAL128) : numerator;
    }

    /** Null when the text does not begin with a plain decimal or a fraction: no exponents, no NaN, no hexadecimal. */
    static @Nullable NumberText of(String text) {
        return new Scan(text).scan();
    }

    static boolean isSpace(char c) {
        return c == ' ' || c == '\t' || c == '\u00a0' || c == '\u2009' || c == '\u202f';
    }

    /** Reads from left to right, remembering where it is. */
    private static final class Scan {
        private final String text;
        private int at;

        Scan(String text) {
            this.text = text;
        }

        @Nullable
        NumberText scan() {
            skipSpaces();
            boolean negative = sign();
            String whole = digits();
            NumberText found = fraction(whole);
            if (found == null) {
                found = decimal(whole);
            }
            if (found == null || whole.length() > MOST_DIGITS) {
                return null;
            }
            return negative ? new NumberText(found.numerator.negate(), found.denominator, found.rest) : found;
        }

        private @Nullable NumberText decimal(String whole) {
            String places = "";
            boolean comma = at < text.length() && text.charAt(at) == ',';
            if (at + 1 < text.length() && isPoint(text.charAt(at)) && isDigit(text.charAt(at + 1))) {
                at++;
                places = digits();
            }
            if (comma && places.length() == THOUSANDS && !whole.isEmpty() && !whole.equals("0")) {
                return null;
            }
            if ((whole.isEmpty() && places.isEmpty()) || places.length() > MOST_DIGITS) {
                return null;
            }
            BigDecimal value =
                    new BigDecimal(places.isEmpty() ? whole : (whole.isEmpty() ? "0" : whole) + "." + places);
            return new NumberText(value, BigDecimal.ONE, rest());
        }

        /** {@code 9/16}, {@code 1 1/8} or {@code 1-1/8}. */
        private @Nullable NumberText fraction(String first) {
            int start = at;
            String whole = "0";
            String above = first;
            if (!first.isEmpty() && at < text.length() && (isSpace(text.charAt(at)) || text.charAt(at) == '-')) {
                at++;
                whole = first;
                above = digits();
            }
            String below = at < text.length() && text.charAt(at) == '/' ? digitsAfter() : "";
            if (above.isEmpty() || below.isEmpty() || above.length() > MOST_DIGITS || below.length() > MOST_DIGITS) {
                at = start;
                return null;
            }
            BigDecimal denominator = new BigDecimal(below);
            BigDecimal numerator = new BigDecimal(whole).multiply(denominator).add(new BigDecimal(above));
            return denominator.signum() == 0 ? null : new NumberText(numerator, denominator, rest());
        }

        private String digitsAfter() {
            at++;
            return digits();
        }

        private boolean sign() {
            if (at < text.length() && "+-−–".indexOf(text.charAt(at)) >= 0) {
                return text.charAt(at++) != '+';
            }
            return false;
        }

        private String digits() {
            int start = at;
            while (at < text.length() && isDigit(text.charAt(at))) {
                at++;
            }
            return text.substring(start, at);
        }

        private void skipSpaces() {
            while (at < text.length() && isSpace(text.charAt(at))) {
                at++;
            }
        }

        private String rest() {
            skipSpaces();
            int end = text.length();
            while (end > at && isSpace(text.charAt(end - 1))) {
                end--;
            }
            return text.substring(at, end);
        }

        private static boolean isDigit(char c) {
            return c >= '0' && c <= '9';
        }

        private static boolean isPoint(char c) {
            return c == '.' || c == ',';
        }
    }
}

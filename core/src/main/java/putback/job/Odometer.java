package putback.job;

import putback.quantity.Parsed;
import putback.quantity.Shown;

/**
 * What a car's own clock shows, in whole units of whatever it counts.
 *
 * @param reading 0 to 9,999,999
 */
public record Odometer(int reading) {
    private static final int MOST_DIGITS = 7;
    private static final int GROUP = 3;

    /** Reads {@code 128400}, {@code 128 400}, {@code 128,400} and {@code 128.400}; never throws. */
    public static Parsed<Odometer> read(String typed) {
        StringBuilder digits = new StringBuilder();
        int separator = -1;
        int sinceSeparator = 0;
        for (int i = 0; i < typed.length(); i++) {
            char c = typed.charAt(i);
            if (c >= '0' && c <= '9') {
                digits.append(c);
                sinceSeparator++;
            } else if (isSeparator(c)
                    && (separator == -1 || separator == c && sinceSeparator == GROUP)
                    && !digits.isEmpty()) {
                separator = c;
                sinceSeparator = 0;
            } else {
                return refused(typed);
            }
        }
        boolean ungrouped = separator != -1 && sinceSeparator != GROUP;
        return digits.isEmpty() || digits.length() > MOST_DIGITS || ungrouped
                ? refused(typed)
                : new Parsed.Value<>(new Odometer(Integer.parseInt(digits.toString())));
    }

    private static boolean isSeparator(char c) {
        return c == ' ' || c == '.' || c == ',' || c == '\'' || c == '\u00a0' || c == '\u202f' || c == '\u2019';
    }

    private static Parsed<Odometer> refused(String typed) {
        return new Parsed.Refused<>("mileage " + Shown.text(typed)
                + " is no reading of a car's clock; write whole km or miles without the unit, such as 128400");
    }
}

package putback.job;

import java.time.LocalDate;
import putback.quantity.Parsed;
import putback.quantity.Shown;

/**
 * When a car was built, as far as known.
 *
 * @param year 1900 or later
 * @param month 1 to 12; 0 when only the year is known
 */
public record Built(int year, int month) {
    private static final int FIRST = 1900;
    private static final int MONTHS = 12;

    /** Reads {@code 2014}, {@code 2014-03}, {@code 3/2014} and {@code 03.2014}; never throws. */
    public static Parsed<Built> read(String typed, LocalDate today) {
        int split = -1;
        for (int i = 0; i < typed.length(); i++) {
            char c = typed.charAt(i);
            if (split < 0 && (c == '-' || c == '/' || c == '.' || c == ' ')) {
                split = i;
            } else if (c < '0' || c > '9') {
                return refused(typed, "is no year, nor year and month");
            }
        }
        String first = split < 0 ? typed : typed.substring(0, split);
        String second = split < 0 ? "" : typed.substring(split + 1);
        boolean yearFirst = first.length() == 4;
        int year = number(yearFirst ? first : second);
        int month = split < 0 ? 0 : number(yearFirst ? second : first);
        if (year < FIRST || month > MONTHS || split >= 0 && month < 1) {
            return refused(typed, "is no year, nor year and month");
        }
        boolean later = year > today.getYear() || year == today.getYear() && month > today.getMonthValue();
        return later ? refused(typed, "lies ahead") : new Parsed.Value<>(new Built(year, month));
    }

    private static int number(String digits) {
        return digits.isEmpty() || digits.length() > 4 ? -1 : Integer.parseInt(digits);
    }

    private static Parsed<Built> refused(String typed, String why) {
        return new Parsed.Refused<>("built " + Shown.text(typed) + " " + why + "; write it such as 2014 or 2014-03");
    }
}

package putback.store.sheets;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import putback.quantity.Parsed;
import putback.quantity.Shown;

/** How threads and strength classes are spelt. Whether they suit each other is for the tightening to judge. */
final class Designations {
    private static final List<String> METRIC_CLASSES =
            List.of("4.6", "4.8", "5.6", "5.8", "6.8", "8.8", "9.8", "10.9", "12.9");
    private static final List<String> STAINLESS_CLASSES = List.of("A2-50", "A2-70", "A2-80", "A4-50", "A4-70", "A4-80");
    private static final List<String> SAE_GRADES = List.of("SAE 2", "SAE 5", "SAE 8");

    private static final BigDecimal TWO = BigDecimal.valueOf(2);
    private static final String CROSSES = "x×";

    /** Compiled only where a thread is not metric. */
    private static final class Inch {
        static final Pattern PATTERN =
                Pattern.compile("(\\d{1,2}|\\d{1,2}/\\d{1,2}|\\d-\\d{1,2}/\\d{1,2})-(\\d{1,2})(?: ?(UN[CF]))?");
    }

    private Designations() {}

    /** {@code M12x1.25}, {@code M12}, {@code 1/2-20}, {@code 1/2-20 UNF}; given back in one spelling. */
    static Parsed<String> thread(String text) {
        String written = text.strip();
        if (written.startsWith("M")) {
            return metric(text, written);
        }
        Matcher inch = Inch.PATTERN.matcher(written);
        return inch.matches() && Integer.parseInt(inch.group(2)) > 0
                ? new Parsed.Value<>(
                        inch.group(1) + "-" + inch.group(2) + (inch.group(3) == null ? "" : " " + inch.group(3)))
                : notAThread(text);
    }

    private static Parsed<String> metric(String text, String written) {
        int end = numberEnd(written, 1);
        int cross = written.startsWith(" ", end) ? end + 1 : end;
        if (end == written.length() && end > 1) {
            return metric(text, written.substring(1), "");
        }
        if (end == 1 || cross >= written.length() || CROSSES.indexOf(written.charAt(cross)) < 0) {
            return notAThread(text);
        }
        int start = written.startsWith(" ", cross + 1) ? cross + 2 : cross + 1;
        boolean whole = start < written.length() && numberEnd(written, start) == written.length();
        return whole ? metric(text, written.substring(1, end), written.substring(start)) : notAThread(text);
    }

    private static Parsed<String> metric(String text, String diameter, String pitch) {
        String d = diameter.replace(',', '.');
        String p = pitch.replace(',', '.');
        BigDecimal across = new BigDecimal(d);
        boolean possible = across.compareTo(BigDecimal.ONE) >= 0
                && (p.isEmpty()
                        || (new BigDecimal(p).signum() > 0
                                && new BigDecimal(p).multiply(TWO).compareTo(across) < 0));
        return possible
                ? new Parsed.Value<>("M" + d + (p.isEmpty() ? "" : "x" + p))
                : new Parsed.Refused<>("\"" + Shown.text(text) + "\" cannot be a thread; its diameter comes first,"
                        + " then its pitch, as in M12x1.25");
    }

    /** Where a number of up to three figures and two places ends; where it begins if there is none. */
    private static int numberEnd(String text, int start) {
        int end = digitsEnd(text, start, 3);
        boolean places = end > start && end < text.length() && (text.charAt(end) == '.' || text.charAt(end) == ',');
        int placesEnd = places ? digitsEnd(text, end + 1, 2) : 0;
        return placesEnd > end + 1 ? placesEnd : end;
    }

    private static int digitsEnd(String text, int start, int most) {
        int end = start;
        while (end < text.length() && end - start < most && text.charAt(end) >= '0' && text.charAt(end) <= '9') {
            end++;
        }
        return end;
    }

    private static Parsed<String> notAThread(String text) {
        return new Parsed.Refused<>(
                "\"" + Shown.text(text) + "\" is not a thread; write it like M12x1.25, M12 or 1/2-20");
    }

    /** {@code 10.9}, {@code A2-70}, {@code SAE 5}. */
    static Parsed<String> strengthClass(String text) {
        String written = text.strip().replace(',', '.').toUpperCase(Locale.ROOT);
        if (METRIC_CLASSES.contains(written) || STAINLESS_CLASSES.contains(written) || SAE_GRADES.contains(written)) {
            return new Parsed.Value<>(written);
        }
        return new Parsed.Refused<>("\"" + Shown.text(text) + "\" is not a strength class; write one of "
                + String.join(", ", METRIC_CLASSES) + ", " + STAINLESS_CLASSES.get(0) + " to "
                + STAINLESS_CLASSES.get(STAINLESS_CLASSES.size() - 1) + ", " + String.join(", ", SAE_GRADES));
    }
}

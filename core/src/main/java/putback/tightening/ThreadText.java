package putback.tightening;

import java.util.List;
import java.util.Locale;
import java.util.StringJoiner;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import putback.quantity.Length;
import putback.quantity.Parsed;
import putback.quantity.Shown;

/** Reads the designation of a thread. Every refusal names what was written and which threads there are near it. */
final class ThreadText {
    private static final class Unified {
        private static final Pattern PATTERN = Pattern.compile(
                "(?:#|No\\.? ?)?(\\d{1,2}(?:[- ]\\d/\\d{1,2})?|\\d{1,2}/\\d{1,2}) ?(?:in|\")? ?- ?(\\d{1,2})(?: ?(UNC|UNF|UNS|unc|unf|uns))?");
    }

    /** A numbered size n is 0.060 + 0.013 n inches thick (ASME B1.1). */
    private static final double NUMBER_ZERO_IN = 0.060;

    private static final double NUMBER_STEP_IN = 0.013;

    private ThreadText() {}

    static Parsed<ScrewThread> parse(String text) {
        String trimmed = text.strip();
        if (!trimmed.isEmpty() && "Mm".indexOf(trimmed.charAt(0)) >= 0) {
            return metric(text, trimmed.substring(1).strip());
        }
        Matcher unified = Unified.PATTERN.matcher(trimmed);
        if (unified.matches()) {
            return unified(text, unified);
        }
        return refused(text, " is not a thread", "write it as M12x1.25 or 1/2-20");
    }

    /** Read by hand, not by pattern: each plan looks at a dozen of them while the program is still cold. */
    private static Parsed<ScrewThread> metric(String text, String sizes) {
        int times = times(sizes);
        String size = (times < 0 ? sizes : sizes.substring(0, times)).strip();
        String by = times < 0 ? "" : sizes.substring(times + 1).strip();
        if (!isNumber(size) || (times >= 0 && !isNumber(by))) {
            return refused(text, " is not a thread", "write it as M12x1.25 or 1/2-20");
        }
        double diameter = number(size);
        List<Double> pitches = ThreadSizes.metricPitches(diameter);
        if (pitches.isEmpty()) {
            return refused(
                    text,
                    ": M" + plain(diameter) + " is not a size of ISO 261",
                    "the nearest: " + ThreadSizes.metricNear(diameter));
        }
        double coarse = pitches.get(0);
        double pitch = times < 0 ? coarse : number(by);
        if (Double.isNaN(pitch) || !pitches.contains(pitch)) {
            String what =
                    Double.isNaN(pitch) ? " needs its pitch" : ": " + plain(pitch) + " mm is not one of its pitches";
            return refused(text, what, "ISO 261 gives M" + plain(diameter) + " " + pitches(pitches));
        }
        String name = "M" + plain(diameter) + "x" + plain(pitch);
        Series series = pitch == coarse ? Series.METRIC_COARSE : Series.METRIC_FINE;
        return new Parsed.Value<>(new ScrewThread(name, series, diameter, pitch));
    }

    private static int times(String sizes) {
        for (int i = 0; i < sizes.length(); i++) {
            if ("xX×*".indexOf(sizes.charAt(i)) >= 0) {
                return i;
            }
        }
        return -1;
    }

    /** Up to three digits, then perhaps a point or comma and up to three more. */
    private static boolean isNumber(String text) {
        int point = Math.max(text.indexOf('.'), text.indexOf(','));
        String whole = point < 0 ? text : text.substring(0, point);
        return isDigits(whole) && (point < 0 || isDigits(text.substring(point + 1)));
    }

    private static boolean isDigits(String text) {
        for (int i = 0; i < text.length(); i++) {
            if (text.charAt(i) < '0' || text.charAt(i) > '9') {
                return false;
            }
        }
        return !text.isEmpty() && text.length() <= 3;
    }

    private static String pitches(List<Double> pitches) {
        StringJoiner listed = new StringJoiner(", ");
        for (double pitch : pitches) {
            if (!Double.isNaN(pitch)) {
                listed.add(plain(pitch));
            }
        }
        return listed + " mm";
    }

    private static Parsed<ScrewThread> unified(String text, Matcher found) {
        String size = found.group(1).replace(' ', '-');
        int count = Integer.parseInt(found.group(2));
        List<Integer> counts = ThreadSizes.threadsPerInch(size);
        if (counts.isEmpty()) {
            return refused(text, " is not a size of ASME B1.1", "write it as 1/2-20 or 10-32");
        }
        int at = counts.indexOf(count);
        Series series = at == 0 ? Series.UNC : at == 1 ? Series.UNF : Series.UNS;
        String said = found.group(3);
        if (at < 0 || (said != null && !series.name().equals(said.toUpperCase(Locale.ROOT)))) {
            return refused(
                    text,
                    at < 0 ? ": there is no " + size + "-" + count : " is " + series.name(),
                    "ASME B1.1 gives " + size + "-" + counts.get(0) + " UNC and " + size + "-" + counts.get(1)
                            + " UNF");
        }
        return new Parsed.Value<>(new ScrewThread(
                size + "-" + count + " " + series.name(),
                series,
                inches(size) * Length.MILLIMETRES_PER_INCH,
                Length.MILLIMETRES_PER_INCH / count));
    }

    private static double inches(String size) {
        int slash = size.indexOf('/');
        if (slash < 0) {
            int number = Integer.parseInt(size);
            return number == 1 ? 1 : NUMBER_ZERO_IN + NUMBER_STEP_IN * number;
        }
        int hyphen = size.indexOf('-');
        double whole = hyphen < 0 ? 0 : Double.parseDouble(size.substring(0, hyphen));
        double above = Double.parseDouble(size.substring(hyphen + 1, slash));
        return whole + above / Double.parseDouble(size.substring(slash + 1));
    }

    private static double number(String text) {
        return Double.parseDouble(text.replace(',', '.'));
    }

    /** Without a trailing {@code .0}. */
    static String plain(double value) {
        return value == Math.rint(value) ? Long.toString((long) value) : Double.toString(value);
    }

    private static Parsed<ScrewThread> refused(String text, String what, String right) {
        return new Parsed.Refused<>("\"" + Shown.text(text) + "\"" + what + "; " + right);
    }
}

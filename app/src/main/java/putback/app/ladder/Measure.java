package putback.app.ladder;

import java.util.ArrayList;
import java.util.List;

/** How wide text is in the usual grotesque, so that it can be wrapped and shortened before it is drawn. */
final class Measure {
    /** Advance widths in thousandths of the size, from the space to the tilde. */
    private static final int[] WIDTHS = {
        278, 278, 355, 556, 556, 889, 667, 191, 333, 333, 389, 584, 278, 333, 278, 278, 556, 556, 556, 556, 556, 556,
        556, 556, 556, 556, 278, 278, 584, 584, 584, 556, 1015, 667, 667, 722, 722, 667, 611, 778, 722, 278, 500, 667,
        556, 833, 722, 778, 667, 778, 722, 667, 611, 722, 667, 944, 667, 667, 611, 278, 278, 278, 469, 556, 333, 556,
        556, 500, 556, 556, 278, 556, 556, 222, 222, 500, 222, 833, 556, 556, 556, 556, 333, 500, 278, 556, 500, 722,
        500, 500, 500, 334, 260, 334, 584
    };

    /** Room for a face that runs a little wider than the one measured. */
    private static final double MARGIN = 1.05;

    private static final String ELLIPSIS = "\u2026";

    /** A space at which a line is broken only where there is no other. */
    static final char FIXED_SPACE = '\u00a0';

    private static final String FIXED = Character.toString(FIXED_SPACE);

    private Measure() {}

    /** Width of the text in px at a size in px. */
    static double width(String text, double size) {
        double thousandths = 0;
        for (int i = 0; i < text.length(); ) {
            int code = text.codePointAt(i);
            thousandths += advance(code);
            i += Character.charCount(code);
        }
        return thousandths * size * MARGIN / 1000;
    }

    private static int advance(int code) {
        if (code >= ' ' && code <= '~') {
            return WIDTHS[code - ' '];
        }
        if (code == 0xb7 || code == 0xa0) {
            return 333;
        }
        return code < 0x2000 ? 722 : 1000;
    }

    /** Breaks at spaces, inside a word only where it does not fit alone; what does not fit at all ends in an ellipsis. */
    static List<String> wrap(String text, double size, double width, int lines) {
        List<String> wrapped = new ArrayList<>();
        String rest = text.strip();
        while (!rest.isEmpty() && wrapped.size() < lines - 1 && width(rest, size) > width) {
            int cut = cut(rest, size, width);
            wrapped.add(rest.substring(0, cut).strip());
            rest = rest.substring(rest.startsWith(FIXED, cut) ? cut + 1 : cut).strip();
        }
        if (!rest.isEmpty()) {
            wrapped.add(shorten(rest, size, width));
        }
        return wrapped;
    }

    /** The text, or as much of it as fits with an ellipsis after it. */
    static String shorten(String text, double size, double width) {
        if (width(text, size) <= width) {
            return text;
        }
        int end = fitting(text, size, width - width(ELLIPSIS, size));
        return text.substring(0, end).strip() + ELLIPSIS;
    }

    private static int cut(String text, double size, double width) {
        int fits = fitting(text, size, width);
        int space = text.lastIndexOf(' ', fits);
        int fixed = space > 0 ? space : text.lastIndexOf(FIXED_SPACE, fits);
        if (fixed > 0 && fixed < text.length()) {
            return fixed;
        }
        return Math.max(fits, Character.charCount(text.codePointAt(0)));
    }

    /** How many characters fit. */
    private static int fitting(String text, double size, double width) {
        double used = 0;
        int i = 0;
        while (i < text.length()) {
            int code = text.codePointAt(i);
            used += advance(code) * size * MARGIN / 1000;
            if (used > width) {
                return i;
            }
            i += Character.charCount(code);
        }
        return i;
    }
}

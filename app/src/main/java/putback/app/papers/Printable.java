package putback.app.papers;

import java.lang.Character.UnicodeScript;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * A page whose letters can all be printed. What the typeface lacks is said in words, not left out, and not a sign that
 * could be anything.
 */
final class Printable {
    private static final String NOTE = "<div id=\"unprintable\"></div>";
    private static final char IN_DRAWINGS = '\u25a1';

    private static final Pattern BEFORE_UNIT = Pattern.compile("(?<=\\d) (?=(?:N·m|lbf·ft|lbf·in|mm|min)\\b)");

    private final StringBuilder to;
    private boolean lacking;

    private Printable(int length) {
        to = new StringBuilder(length + 64);
    }

    /** The page with a note at its end where something could not be printed. */
    static String page(String html) {
        Printable page = new Printable(html.length());
        page.copy(html);
        String done = page.to.toString();
        return page.lacking
                ? done.replace(
                        NOTE,
                        "<p class=\"below\">In square brackets: letters that this typeface does not have; in drawings "
                                + IN_DRAWINGS + " stands for each. The sheet on the screen shows them.</p>")
                : done;
    }

    /** A figure stays with its unit. */
    static String joined(String html) {
        return BEFORE_UNIT.matcher(html).replaceAll("\u00a0");
    }

    private void copy(String html) {
        boolean drawing = false;
        for (int at = 0; at < html.length(); ) {
            if (html.charAt(at) == '<') {
                drawing = html.startsWith("<svg", at) || drawing && !html.startsWith("</svg", at);
            }
            int letter = html.codePointAt(at);
            if (fine(letter)) {
                to.appendCodePoint(letter);
                at += Character.charCount(letter);
            } else if (drawing) {
                to.append(IN_DRAWINGS);
                at += Character.charCount(letter);
                lacking = true;
            } else {
                at = run(html, at);
            }
        }
    }

    /** Letters of one script that follow each other are said together. */
    private int run(String html, int from) {
        UnicodeScript script = UnicodeScript.of(html.codePointAt(from));
        int count = 0;
        int at = from;
        while (at < html.length()) {
            int letter = html.codePointAt(at);
            UnicodeScript its = UnicodeScript.of(letter);
            if (fine(letter) || its != script && its != UnicodeScript.INHERITED) {
                break;
            }
            count++;
            at += Character.charCount(letter);
        }
        to.append('[').append(count).append(' ').append(said(script, count)).append(" not printable]");
        lacking = true;
        return at;
    }

    private static String said(UnicodeScript script, int count) {
        String what = count == 1 ? "letter" : "letters";
        return switch (script) {
            case COMMON, INHERITED, UNKNOWN -> count == 1 ? "sign" : "signs";
            default -> {
                String name = script.name().replace('_', ' ').toLowerCase(Locale.ROOT);
                yield Character.toUpperCase(name.charAt(0)) + name.substring(1) + " " + what;
            }
        };
    }

    private static boolean fine(int letter) {
        return letter == '\n' || letter >= ' ' && letter < 127 || letter > 159 && Typeface.has(letter);
    }

    /** For an attribute or the text of an element. */
    static String escaped(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }
}

package putback.app.text;

import java.util.ArrayList;
import java.util.List;

/** Lines of text, none wider than the screen. */
final class Page {
    private static final String ESCAPE = "\u001b[";
    private static final int FIGURES = 6;
    private static final String[] UNITS = {"N·m", "N.m", "lbf", "mm", "min", "deg"};
    private static final String[] TOOLS = {"socket", "spanner", "hex", "flare", "bit", "key"};

    private final Screen screen;
    private final StringBuilder text = new StringBuilder(8192);

    Page(Screen screen) {
        this.screen = screen;
    }

    /** What a letter is painted with; colour only helps, and nothing depends on it. */
    enum Ink {
        PLAIN(""),
        STRONG("1"),
        LINE("34"),
        FAINT("2"),
        OCHRE("33");

        private final String code;

        Ink(String code) {
            this.code = code;
        }
    }

    /** An empty line. */
    Page gap() {
        text.append('\n');
        return this;
    }

    /** A word over a part of the page, and what its figures are. */
    Page heading(String word, String figures) {
        paint(Ink.STRONG, word);
        if (!figures.isEmpty()) {
            text.append(" ".repeat(screen.width() - word.length() - figures.length()))
                    .append(figures);
        }
        return gap();
    }

    /** Words from the left edge on. */
    Page words(Ink ink, String words) {
        return words(ink, "", words);
    }

    /** Words after something that stands at the left of the first line only. */
    Page words(Ink ink, String lead, String words) {
        int indent = Letters.width(Letters.shown(lead, screen.ascii()));
        String before = lead;
        for (String line : wrap(words, screen.width() - indent)) {
            paint(Ink.PLAIN, before);
            put(ink, line);
            text.append('\n');
            before = " ".repeat(indent);
        }
        return this;
    }

    /** A line across the page with words in it. */
    Page rule(String lead, String words, String figure) {
        int room = screen.width() - FIGURES - Letters.width(shown(lead)) - 2;
        List<String> lines = wrap(words, room);
        for (int i = 0; i < lines.size(); i++) {
            String line = lines.get(i);
            paint(Ink.LINE, i == 0 ? lead : " ".repeat(Letters.width(shown(lead))));
            put(Ink.STRONG, line);
            if (i == lines.size() - 1) {
                paint(Ink.LINE, " " + "─".repeat(Math.max(0, room + 1 - Letters.width(line))));
                text.append(" ".repeat(Math.max(0, FIGURES - figure.length()))).append(figure);
            }
            text.append('\n');
        }
        return this;
    }

    /**
     * A row of the ladder.
     *
     * @param rail what stands on the rail in the first line
     * @param on what stands there in the lines that follow
     */
    Page row(String rail, String on, String number, Ink ink, String words, String figure) {
        String before = shown(number);
        int column = Letters.width(before);
        int indent = Letters.width(shown(rail)) + column;
        boolean first = true;
        for (String line : wrap(words, screen.width() - indent - Math.max(FIGURES, figure.length()) - 1)) {
            paint(Ink.LINE, first ? rail : on);
            put(ink, first ? before : " ".repeat(column));
            text.append(line);
            if (first && !figure.isEmpty()) {
                int used = indent + Letters.width(line);
                text.append(" ".repeat(Math.max(1, screen.width() - used - figure.length())))
                        .append(figure);
            }
            text.append('\n');
            first = false;
        }
        return this;
    }

    private String shown(String words) {
        return Letters.shown(words, screen.ascii());
    }

    private void paint(Ink ink, String words) {
        put(ink, shown(words));
    }

    /** Paints what is made for this screen already. */
    private void put(Ink ink, String shown) {
        boolean painted = screen.colour() && ink != Ink.PLAIN && !shown.isBlank();
        if (painted) {
            text.append(ESCAPE).append(ink.code).append('m');
        }
        text.append(shown);
        if (painted) {
            text.append(ESCAPE).append("0m");
        }
    }

    /** Breaks at spaces, and a word that is too long where it has to be; a figure stays with its unit. */
    private List<String> wrap(String words, int columns) {
        String all = shown(words);
        List<String> lines = new ArrayList<>();
        int from = 0;
        while (from < all.length()) {
            int to = Letters.fitting(all, from, Math.max(1, columns));
            if (to < all.length() && all.charAt(to) != ' ') {
                to = lastBreak(all, from, to);
            }
            lines.add(all.substring(from, to).stripTrailing());
            from = to;
            while (from < all.length() && all.charAt(from) == ' ') {
                from++;
            }
        }
        if (lines.isEmpty()) {
            lines.add("");
        }
        return lines;
    }

    private static int lastBreak(String all, int from, int to) {
        for (int at = to; at > from + 1; at--) {
            if (all.charAt(at - 1) == ' ' && !splitsFigure(all, at - 1, from)) {
                return at;
            }
        }
        return to;
    }

    /** Whether the space stands between a figure and its unit, or between a size and its tool. */
    private static boolean splitsFigure(String all, int space, int from) {
        if (space <= from || space + 1 >= all.length()) {
            return false;
        }
        char before = all.charAt(space - 1);
        boolean figure = before >= '0' && before <= '9';
        boolean size = all.startsWith("mm", space - 2);
        boolean joined =
                figure && startsAny(all, space + 1, UNITS) || (figure || size) && startsAny(all, space + 1, TOOLS);
        return joined && all.lastIndexOf(' ', space - 1) > from;
    }

    private static boolean startsAny(String all, int at, String[] words) {
        for (String word : words) {
            if (all.startsWith(word, at)) {
                return true;
            }
        }
        return false;
    }

    /** All lines, without spaces at their ends. */
    @Override
    public String toString() {
        return text.toString();
    }
}

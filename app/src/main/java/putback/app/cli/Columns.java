package putback.app.cli;

/** Help within 80 columns: a name, and beside it what it is, broken at spaces. */
final class Columns {
    static final int WIDTH = 80;

    private static final String MARGIN = "  ";

    private Columns() {}

    /** A row. The words go below the name where they would get less than half the width beside it. */
    static void row(StringBuilder text, String name, int widest, String words) {
        int column = Math.min(widest, WIDTH / 2 - 2 * MARGIN.length()) + 2 * MARGIN.length();
        text.append(MARGIN).append(name);
        int at = MARGIN.length() + name.length();
        if (at + MARGIN.length() > column) {
            text.append('\n');
            at = 0;
        }
        text.append(" ".repeat(column - at));
        wrap(text, words, column, column);
    }

    /** Words from the left edge on. */
    static void paragraph(StringBuilder text, String words) {
        wrap(text, words, 0, 0);
    }

    /** The same some columns in. */
    static void indented(StringBuilder text, int columns, String words) {
        text.append(" ".repeat(columns));
        wrap(text, words, columns, columns);
    }

    /** Paragraphs, broken anew; lines that are indented stay as they are. */
    static void flowing(StringBuilder text, String words) {
        StringBuilder paragraph = new StringBuilder();
        for (String line : (words + "\n ").split("\n", -1)) {
            boolean flows = !line.isEmpty() && line.charAt(0) != ' ';
            if (flows) {
                paragraph.append(paragraph.length() == 0 ? "" : " ").append(line);
                continue;
            }
            if (paragraph.length() > 0) {
                paragraph(text, paragraph.toString());
                paragraph.setLength(0);
            }
            if (!line.equals(" ")) {
                text.append(line).append('\n');
            }
        }
    }

    private static void wrap(StringBuilder text, String words, int from, int indent) {
        int at = from;
        int start = 0;
        while (start <= words.length()) {
            int end = words.indexOf(' ', start);
            end = end < 0 ? words.length() : end;
            boolean first = at == from && start == 0;
            if (!first && at + 1 + end - start > WIDTH) {
                text.append('\n').append(" ".repeat(indent));
                at = indent;
            } else if (!first) {
                text.append(' ');
                at++;
            }
            text.append(words, start, end);
            at += end - start;
            start = end + 1;
        }
        text.append('\n');
    }
}

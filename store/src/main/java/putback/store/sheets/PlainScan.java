package putback.store.sheets;

import putback.store.sheets.Node.Text;

/** Goes through plain YAML from left to right: counts lines, skips what says nothing, reads scalars on one line. */
final class PlainScan {
    private static final int LONGEST_KEY = 100;
    private static final int MOST_NODES = 10_000;

    private final String file;
    private final String text;
    private final int length;
    /** The text, and line ends after it. */
    private final char[] characters;

    private int at;
    private int line = 1;
    private int lineStart;
    private int nodes;

    /** There is something that only the full reader understands. It carries no stack trace: nobody looks where it came from. */
    static final class NotPlain extends RuntimeException {
        private static final long serialVersionUID = 1;

        private NotPlain() {
            super("not plain", null, false, false);
        }
    }

    PlainScan(String file, String text) {
        this.file = file;
        this.text = text;
        this.length = text.length();
        this.characters = new char[length + 2];
        text.getChars(0, length, characters, 0);
        characters[length] = '\n';
        characters[length + 1] = '\n';
        for (char c : characters) {
            require(c == '\n' || (c >= ' ' && c < 0x7F) || isOrdinary(c));
        }
    }

    private static boolean isOrdinary(char c) {
        return c > 0x9F && c < 0xFFFE && !Character.isSurrogate(c) && c != 0x2028 && c != 0x2029 && c != 0xFEFF;
    }

    static void require(boolean plain) {
        if (!plain) {
            throw new NotPlain();
        }
    }

    Place here() {
        require(++nodes < MOST_NODES);
        return new Place(file, line, at - lineStart + 1);
    }

    /** The character here; a line end at the end of the text. */
    char peek() {
        return characters[at];
    }

    char after() {
        return characters[at + 1];
    }

    void step() {
        at++;
    }

    void expect(char c) {
        require(at < length && characters[at] == c);
        at++;
    }

    /** Goes to the next thing that is not space or comment, and gives its column from 0; -1 at the end. */
    int next() {
        while (at < length) {
            char c = characters[at];
            if (c == '\n') {
                at++;
                line++;
                lineStart = at;
            } else if (c == ' ') {
                at++;
            } else if (c == '#') {
                require(at == lineStart || characters[at - 1] == ' ');
                toLineEnd();
            } else {
                return at - lineStart;
            }
        }
        return -1;
    }

    /** Whether nothing but spaces and a comment follow on this line; goes there. */
    boolean isLineDone() {
        int start = at;
        while (peek() == ' ') {
            at++;
        }
        if (peek() == '#' && at > start) {
            toLineEnd();
        }
        return peek() == '\n';
    }

    private void toLineEnd() {
        int end = text.indexOf('\n', at);
        at = end < 0 ? length : end;
    }

    boolean isItem() {
        return peek() == '-' && after() == ' ';
    }

    /** Whether a key and its colon stand here. */
    boolean isKey() {
        int end = keyEnd();
        return end > at && characters[end] == ':' && (characters[end + 1] == ' ' || characters[end + 1] == '\n');
    }

    private int keyEnd() {
        int end = at;
        while (isKeyCharacter(characters[end], end > at)) {
            end++;
        }
        return end;
    }

    private static boolean isKeyCharacter(char c, boolean inside) {
        return (c >= 'a' && c <= 'z')
                || (c >= 'A' && c <= 'Z')
                || (c >= '0' && c <= '9')
                || (inside && (c == '-' || c == '.' || c == '_'));
    }

    /** A key, without the colon that has to follow it. */
    Text key() {
        if (peek() == '"' || peek() == '\'') {
            Text quoted = quoted();
            require(quoted.text().length() < LONGEST_KEY);
            return quoted;
        }
        require(isKey());
        Place place = here();
        int start = at;
        at = keyEnd();
        require(at - start < LONGEST_KEY);
        return new Text(place, text.substring(start, at), false);
    }

    Text quoted() {
        Place place = here();
        char quote = peek();
        StringBuilder value = new StringBuilder();
        for (at++; peek() != quote || (quote == '\'' && after() == quote); at++) {
            char c = peek();
            require(c != '\n' && (c != '\\' || quote == '\''));
            at += c == quote ? 1 : 0;
            value.append(c);
        }
        at++;
        return new Text(place, value.toString(), true);
    }

    /** A scalar without quotes that ends on this line. */
    Text plain(boolean inFlow) {
        char first = peek();
        require(
                first == '-'
                        ? isKeyCharacter(after(), false)
                        : first != ' ' && "?:,[]{}#&*!|>'\"%@`\n".indexOf(first) < 0);
        Place place = here();
        int start = at;
        int end = at;
        for (char c = first; c != '\n' && !(inFlow && isFlow(c)); c = peek()) {
            require(c != ':' || (!inFlow && after() != ' ' && after() != '\n'));
            if (c == '#' && characters[at - 1] == ' ') {
                break;
            }
            at++;
            end = c == ' ' ? end : at;
        }
        at = end;
        return new Text(place, text.substring(start, end), false);
    }

    private static boolean isFlow(char c) {
        return c == ',' || c == '[' || c == ']' || c == '{' || c == '}';
    }
}

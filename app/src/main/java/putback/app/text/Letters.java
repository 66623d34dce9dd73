package putback.app.text;

import java.text.Normalizer;
import putback.quantity.Shown;

/** The letters that a screen can show, and how wide they are. */
final class Letters {
    /** All letters before this one take one column. */
    private static final int FIRST_UNEVEN = 0x300;

    private Letters() {}

    /** The text as this screen can show it: nothing in it steers the terminal, and it is ASCII where nothing else is known. */
    static String shown(String text, boolean ascii) {
        return isPlain(text, ascii) ? text : rewritten(text, ascii);
    }

    private static boolean isPlain(String text, boolean ascii) {
        char[] letters = text.toCharArray();
        for (int i = 0; i < letters.length; i++) {
            char c = letters[i];
            if ((c < ' ' || c >= 127) && (ascii || !isKnown(c))) {
                return false;
            }
        }
        return true;
    }

    private static String rewritten(String text, boolean ascii) {
        StringBuilder shown = new StringBuilder(text.length() + 16);
        for (int i = 0; i < text.length(); ) {
            int c = text.codePointAt(i);
            i += Character.charCount(c);
            if (!Shown.isHarmless(c)) {
                shown.append('?');
            } else if (ascii && c > 126) {
                shown.append(spelled(c));
            } else {
                shown.appendCodePoint(c);
            }
        }
        return shown.toString();
    }

    /** Common letters and drawing signs, all of them harmless, so that most texts need not be written anew. */
    private static boolean isKnown(char c) {
        return c > 0xa0 && c < FIRST_UNEVEN && c != 0xad || isDrawing(c);
    }

    /** Lines, blocks and circles. */
    private static boolean isDrawing(int c) {
        return c >= 0x2500 && c < 0x2600;
    }

    private static String spelled(int c) {
        return switch (c) {
            case '·' -> ".";
            case '°' -> " deg";
            case '×' -> "x";
            case '±' -> "+-";
            case '…' -> "...";
            case '–', '−', '─' -> "-";
            case '◌' -> ".";
            case '◐' -> "=";
            case '│' -> "|";
            case '├' -> "+";
            case '○' -> "o";
            case '●' -> "*";
            case '’', '‘' -> "'";
            case '“', '”' -> "\"";
            case '\u00a0', '\u2009', '\u202f' -> " ";
            default -> withoutMarks(c);
        };
    }

    private static String withoutMarks(int c) {
        String apart = Normalizer.normalize(Character.toString(c), Normalizer.Form.NFD);
        return apart.charAt(0) < 127 ? apart.substring(0, 1) : width(c) == 0 ? "" : "?";
    }

    /** Columns that the text takes. */
    static int width(String text) {
        int width = 0;
        char[] letters = text.toCharArray();
        for (int i = 0; i < letters.length; i++) {
            if (letters[i] < FIRST_UNEVEN) {
                width++;
            } else {
                int c = text.codePointAt(i);
                width += width(c);
                i += Character.charCount(c) - 1;
            }
        }
        return width;
    }

    private static int width(int c) {
        if (c < FIRST_UNEVEN || isDrawing(c)) {
            return 1;
        }
        int type = Character.getType(c);
        if (type == Character.NON_SPACING_MARK || type == Character.ENCLOSING_MARK) {
            return 0;
        }
        return isWide(c) ? 2 : 1;
    }

    private static boolean isWide(int c) {
        return c >= 0x1100 && c <= 0x115f
                || c >= 0x2e80 && c <= 0xa4cf
                || c >= 0xac00 && c <= 0xd7a3
                || c >= 0xf900 && c <= 0xfaff
                || c >= 0xfe30 && c <= 0xfe6f
                || c >= 0xff00 && c <= 0xff60
                || c >= 0x1f300 && c <= 0x1faff
                || c >= 0x20000;
    }

    /** How much of the text, from this place on, fits into the columns; at least one letter. */
    static int fitting(String text, int from, int columns) {
        int at = from;
        int used = 0;
        char[] letters = text.toCharArray();
        while (at < letters.length) {
            char first = letters[at];
            int c = first < FIRST_UNEVEN ? first : text.codePointAt(at);
            used += first < FIRST_UNEVEN ? 1 : width(c);
            if (used > columns && at > from) {
                break;
            }
            at += first < FIRST_UNEVEN ? 1 : Character.charCount(c);
        }
        return at;
    }
}

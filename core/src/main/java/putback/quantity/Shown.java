package putback.quantity;

/** Makes text from outside fit for a message: one line, not endless, nothing a terminal would act on. */
public final class Shown {
    private static final int LONGEST = 60;

    private Shown() {}

    /** At most 60 characters; control, format and unpaired surrogate characters become question marks. */
    public static String text(String raw) {
        StringBuilder shown = new StringBuilder();
        int count = 0;
        for (int i = 0; i < raw.length(); count++) {
            if (count == LONGEST) {
                return shown.append("...").toString();
            }
            int c = raw.codePointAt(i);
            shown.appendCodePoint(isHarmless(c) ? c : '?');
            i += Character.charCount(c);
        }
        return shown.toString();
    }

    /** The same for a message of several lines, however long. */
    public static String lines(String raw) {
        StringBuilder shown = new StringBuilder(raw.length());
        for (int i = 0; i < raw.length(); ) {
            int c = raw.codePointAt(i);
            shown.appendCodePoint(c == '\n' || isHarmless(c) ? c : '?');
            i += Character.charCount(c);
        }
        return shown.toString();
    }

    /** Whether a character neither ends a line nor steers a terminal or the direction of writing. */
    public static boolean isHarmless(int c) {
        return switch (Character.getType(c)) {
            case Character.CONTROL,
                    Character.FORMAT,
                    Character.SURROGATE,
                    Character.LINE_SEPARATOR,
                    Character.PARAGRAPH_SEPARATOR,
                    Character.UNASSIGNED -> false;
            default -> true;
        };
    }
}

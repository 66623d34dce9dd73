package putback.app.cli;

import org.jspecify.annotations.Nullable;

/**
 * Steps of a plan as the plan numbers them: one, or those that stand on one line.
 *
 * @param first from 1
 * @param last the same where it is one
 */
record StepRange(int first, int last) {
    private static final String DASHES = "-\u2013\u2014";

    /** Reads {@code 58}, {@code 58-59} or {@code 58–59}; null when it is neither. */
    static @Nullable StepRange read(String text) {
        int dash = -1;
        for (int i = 1; i < text.length() && dash < 0; i++) {
            dash = DASHES.indexOf(text.charAt(i)) >= 0 ? i : -1;
        }
        int first = number(dash < 0 ? text : text.substring(0, dash));
        int last = dash < 0 ? first : number(text.substring(dash + 1));
        return first < 1 || last < first ? null : new StepRange(first, last);
    }

    private static int number(String text) {
        try {
            return Integer.parseInt(text.strip());
        } catch (NumberFormatException notOne) {
            return 0;
        }
    }
}

package putback.app.cli;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** Finds what was probably meant. */
final class Spelling {
    private static final int FURTHEST = 3;

    private Spelling() {}

    /** The name that is fewest letters away from the word, null when none is near. */
    static @Nullable String nearest(String word, List<String> names) {
        String best = null;
        int bestAway = FURTHEST + 1;
        for (String name : names) {
            int away = name.startsWith(word) && word.length() > 2 ? 1 : away(word, name);
            if (away < bestAway && away < name.length() - 1) {
                best = name;
                bestAway = away;
            }
        }
        return best;
    }

    private static int away(String a, String b) {
        int[] row = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            row[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int changed = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.min(changed, Math.min(row[j], row[j - 1]) + 1);
            }
        }
        return row[b.length()];
    }
}

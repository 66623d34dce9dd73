package putback.sheet;

import java.util.Collection;

/** Guesses what a mistyped word was meant to be. */
public final class Nearest {
    private static final int FARTHEST = 3;
    private static final int LONGEST = 64;

    private Nearest() {}

    /** The candidate with the fewest letters changed, or nothing when all are too far off. */
    public static String to(String written, Collection<String> candidates) {
        String best = "";
        int bestDistance = FARTHEST + 1;
        if (written.length() > LONGEST) {
            return best;
        }
        for (String candidate : candidates) {
            int allowed = Math.min(FARTHEST, Math.max(1, candidate.length() / 3));
            if (Math.abs(candidate.length() - written.length()) > allowed) {
                continue;
            }
            int distance = distance(written, candidate);
            if (distance <= allowed && distance < bestDistance) {
                best = candidate;
                bestDistance = distance;
            }
        }
        return best;
    }

    /** Letters changed, added, left out, or two neighbours swapped. */
    private static int distance(String a, String b) {
        int[] twoAbove = new int[b.length() + 1];
        int[] above = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            above[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            int[] row = new int[b.length() + 1];
            row[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int changed = above[j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                row[j] = Math.min(changed, Math.min(above[j], row[j - 1]) + 1);
                if (i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1)) {
                    row[j] = Math.min(row[j], twoAbove[j - 2] + 1);
                }
            }
            twoAbove = above;
            above = row;
        }
        return above[b.length()];
    }
}

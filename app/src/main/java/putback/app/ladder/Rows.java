package putback.app.ladder;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Stands the two rails side by side: as many joints as possible at one height, whatever is on one rail only between
 * them.
 */
final class Rows {
    private Rows() {}

    static List<Row> align(List<Cell> left, List<Cell> right) {
        int[] partner = partners(left, right);
        boolean[] level = longestRising(partner);
        List<Row> rows = new ArrayList<>();
        int l = 0;
        int r = 0;
        for (int i = 0; i < left.size(); i++) {
            if (level[i]) {
                between(rows, left.subList(l, i), right.subList(r, partner[i]));
                rows.add(new Row(left.get(i), right.get(partner[i])));
                l = i + 1;
                r = partner[i] + 1;
            }
        }
        between(rows, left.subList(l, left.size()), right.subList(r, right.size()));
        return rows;
    }

    private static int[] partners(List<Cell> left, List<Cell> right) {
        Map<Integer, Integer> places = new HashMap<>();
        for (int i = 0; i < right.size(); i++) {
            if (right.get(i).rungEnd()) {
                places.put(right.get(i).jointIndex(), i);
            }
        }
        int[] partner = new int[left.size()];
        for (int i = 0; i < partner.length; i++) {
            @Nullable
            Integer place = left.get(i).rungEnd() ? places.get(left.get(i).jointIndex()) : null;
            partner[i] = place == null ? -1 : place;
        }
        return partner;
    }

    /** Marks a longest subsequence of rising places; -1 is none. */
    private static boolean[] longestRising(int[] places) {
        int[] length = new int[places.length];
        int[] before = new int[places.length];
        int last = -1;
        for (int i = 0; i < places.length; i++) {
            before[i] = -1;
            length[i] = places[i] < 0 ? 0 : 1;
            for (int k = 0; k < i; k++) {
                if (places[k] >= 0 && places[k] < places[i] && length[k] + 1 > length[i]) {
                    length[i] = length[k] + 1;
                    before[i] = k;
                }
            }
            if (length[i] > 0 && (last < 0 || length[i] > length[last])) {
                last = i;
            }
        }
        boolean[] chosen = new boolean[places.length];
        for (; last >= 0; last = before[last]) {
            chosen[last] = true;
        }
        return chosen;
    }

    /** Cells that are no rungs pair off from the top; an end of a rung that is not level has its row to itself. */
    private static void between(List<Row> rows, List<Cell> left, List<Cell> right) {
        int l = 0;
        int r = 0;
        while (l < left.size() || r < right.size()) {
            if (l < left.size() && left.get(l).rungEnd()) {
                rows.add(new Row(left.get(l++), null));
            } else if (r < right.size() && right.get(r).rungEnd()) {
                rows.add(new Row(null, right.get(r++)));
            } else {
                rows.add(new Row(l < left.size() ? left.get(l++) : null, r < right.size() ? right.get(r++) : null));
            }
        }
    }
}

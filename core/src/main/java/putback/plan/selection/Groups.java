package putback.plan.selection;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Sorts clauses into groups that share no item. */
final class Groups {
    private Groups() {}

    static List<List<Clause>> of(List<Clause> clauses) {
        int[] leader = new int[clauses.size()];
        Map<Integer, Integer> firstWith = new HashMap<>();
        for (int i = 0; i < leader.length; i++) {
            leader[i] = i;
            join(leader, i, clauses.get(i).oneOf(), firstWith);
            join(leader, i, clauses.get(i).given(), firstWith);
        }
        Map<Integer, List<Clause>> groups = new LinkedHashMap<>();
        for (int i = 0; i < leader.length; i++) {
            List<Clause> group = groups.get(root(leader, i));
            if (group == null) {
                group = new ArrayList<>();
                groups.put(root(leader, i), group);
            }
            group.add(clauses.get(i));
        }
        return List.copyOf(groups.values());
    }

    private static void join(int[] leader, int clause, int[] items, Map<Integer, Integer> firstWith) {
        for (int item : items) {
            Integer other = firstWith.putIfAbsent(item, clause);
            if (other != null) {
                int a = root(leader, other);
                int b = root(leader, clause);
                leader[Math.max(a, b)] = Math.min(a, b);
            }
        }
    }

    private static int root(int[] leader, int i) {
        int at = i;
        while (leader[at] != at) {
            leader[at] = leader[leader[at]];
            at = leader[at];
        }
        return at;
    }
}

package putback.plan.selection;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * A lower bound on the weight of any choice that meets clauses, and what each item would add to it.
 *
 * <p>Each clause that asks for an item now takes what all of its items still have to give (a feasible dual of the linear
 * relaxation). An item that brings others along can give of theirs as well, shared evenly where several of the clause
 * bring the same.
 */
final class Bound {
    private final long[] weight;
    private final long[] left;
    private final Map<Integer, List<int[]>> bringing;
    private long value;

    Bound(long[] weight, List<Clause> clauses) {
        this.weight = weight;
        List<Clause> asking = new ArrayList<>();
        bringing = new HashMap<>();
        int highest = 0;
        for (Clause clause : clauses) {
            int[] oneOf = clause.oneOf();
            int last = oneOf.length == 0 ? 0 : oneOf[oneOf.length - 1];
            highest = Math.max(highest, last);
            if (clause.given().length == 0) {
                asking.add(clause);
            } else if (clause.given().length == 1 && oneOf.length > 0) {
                List<int[]> brought = bringing.get(clause.given()[0]);
                if (brought == null) {
                    brought = new ArrayList<>();
                    bringing.put(clause.given()[0], brought);
                }
                brought.add(oneOf);
            }
        }
        asking.sort(new ByLength());
        left = Arrays.copyOf(weight, highest + 1);
        for (Clause clause : asking) {
            take(clause.oneOf());
        }
        for (Clause clause : asking) {
            take(clause.oneOf());
        }
    }

    long value() {
        return value;
    }

    /** A choice with the item weighs at least the bound and this. */
    long extra(int item) {
        return item < left.length ? left[item] : weight[item];
    }

    private void take(int[] oneOf) {
        long least = Long.MAX_VALUE;
        for (int item : oneOf) {
            least = Math.min(least, left[item]);
        }
        if (least > 0) {
            for (int item : oneOf) {
                left[item] -= least;
            }
            value += least;
        }
        if (!bringing.isEmpty()) {
            takeFromBrought(oneOf);
        }
    }

    private void takeFromBrought(int[] oneOf) {
        long least = Long.MAX_VALUE;
        for (int item : oneOf) {
            long capacity = left[item];
            for (int[] brought : bringing.getOrDefault(item, List.of())) {
                capacity += shareOf(left, brought, oneOf);
            }
            least = Math.min(least, capacity);
            if (least == 0) {
                return;
            }
        }
        long[] before = left.clone();
        for (int item : oneOf) {
            long need = least - Math.min(least, before[item]);
            left[item] -= least - need;
            for (int[] brought : bringing.getOrDefault(item, List.of())) {
                long given = Math.min(need, shareOf(before, brought, oneOf));
                for (int other : brought) {
                    left[other] -= given;
                }
                need -= given;
            }
        }
        value += least;
    }

    /** What one of the clause's items may take of what it brings, if all of them take as much. */
    private long shareOf(long[] has, int[] brought, int[] oneOf) {
        long least = Long.MAX_VALUE;
        for (int item : brought) {
            if (Arrays.binarySearch(oneOf, item) >= 0) {
                return 0;
            }
            int sharing = 0;
            for (int other : oneOf) {
                for (int[] also : bringing.getOrDefault(other, List.of())) {
                    sharing += Arrays.binarySearch(also, item) >= 0 ? 1 : 0;
                }
            }
            least = Math.min(least, has[item] / Math.max(1, sharing));
        }
        return least;
    }
}

package putback.app.ladder;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Joints that are closed at another place than the reverse of their opening: their rungs change height in a lane. */
final class Crossing {
    static final double GAP = 9;

    /** One such joint: row of its left end, row of its right end, and its lane, 0 next to the right rail. */
    record Jog(int left, int right, int lane) {}

    private final List<Jog> jogs;
    private final int lanes;

    private Crossing(List<Jog> jogs, int lanes) {
        this.jogs = jogs;
        this.lanes = lanes;
    }

    static Crossing of(List<Row> rows, int mostLanes) {
        Map<Integer, Integer> rightRows = new HashMap<>();
        for (int i = 0; i < rows.size(); i++) {
            Cell right = rows.get(i).right();
            if (right != null && right.rungEnd() && !rows.get(i).rung()) {
                rightRows.put(right.jointIndex(), i);
            }
        }
        List<Jog> jogs = new ArrayList<>();
        List<int[]> ends = new ArrayList<>();
        int[] rank = ranks(rows);
        for (int i = 0; i < rows.size(); i++) {
            Cell left = rows.get(i).left();
            Integer right = left == null || !left.rungEnd() ? null : rightRows.get(left.jointIndex());
            if (right != null) {
                jogs.add(new Jog(i, right, lane(jogs, ends, rank, i, right, mostLanes)));
            }
        }
        return new Crossing(jogs, ends.size());
    }

    /** For each row how many rows before it hold the end of a rung. */
    private static int[] ranks(List<Row> rows) {
        int[] ranks = new int[rows.size()];
        int rank = 0;
        for (int i = 0; i < ranks.length; i++) {
            ranks[i] = rank;
            Cell left = rows.get(i).left();
            Cell right = rows.get(i).right();
            rank += left != null && left.rungEnd() || right != null && right.rungEnd() ? 1 : 0;
        }
        return ranks;
    }

    /** Joints that move together share a lane; else the first lane that is free there. */
    private static int lane(List<Jog> jogs, List<int[]> taken, int[] rank, int left, int right, int most) {
        Jog last = jogs.isEmpty() ? null : jogs.get(jogs.size() - 1);
        int from = Math.min(left, right);
        int to = Math.max(left, right);
        if (last != null && rank[left] == rank[last.left()] + 1 && Math.abs(rank[right] - rank[last.right()]) == 1) {
            widen(taken.get(last.lane()), from, to);
            return last.lane();
        }
        for (int lane = 0; lane < taken.size(); lane++) {
            int[] span = taken.get(lane);
            if (to < span[0] || from > span[1] || lane == most - 1) {
                widen(span, from, to);
                return lane;
            }
        }
        taken.add(new int[] {from, to});
        return taken.size() - 1;
    }

    private static void widen(int[] span, int from, int to) {
        span[0] = Math.min(span[0], from);
        span[1] = Math.max(span[1], to);
    }

    List<Jog> jogs() {
        return jogs;
    }

    /** Whether a rung changes height in this row or on the way past it. */
    boolean passes(int row) {
        for (Jog jog : jogs) {
            if (row >= Math.min(jog.left(), jog.right()) && row <= Math.max(jog.left(), jog.right())) {
                return true;
            }
        }
        return false;
    }

    /** How much room the lanes take across. */
    double room() {
        return lanes == 0 ? 0 : lanes * GAP + 2;
    }

    double x(Jog jog, Columns columns, int deepest) {
        return columns.railRight - columns.bank(deepest, deepest) - 8 - jog.lane() * GAP;
    }
}

package putback.proof;

import java.util.Arrays;

/**
 * The cheapest way to give each remaining node a node to come from, each used once: no path costs less. Solved by
 * shortest augmenting paths (Kuhn and Munkres).
 */
final class Assignment {
    private static final long NEVER = 1L << 40;

    private final long[][] cost;
    private final int size;

    /**
     * @param to the remaining nodes; they may come from the present one and from each other, but not from the last
     * @param ready those that may come next, a bit each, node 1 first
     */
    Assignment(int[][] matrix, int from, int[] to, long ready) {
        this.size = to.length;
        this.cost = new long[size][size];
        int last = matrix.length - 1;
        for (int row = 0; row < size; row++) {
            for (int column = 0; column < size; column++) {
                int source = column == 0 ? from : sourceAt(to, column, last);
                int edge = matrix[source][to[row]];
                boolean tooSoon = column == 0 && (ready >> to[row] - 1 & 1) == 0;
                cost[row][column] = edge < 0 || source == to[row] || tooSoon ? NEVER : edge;
            }
        }
    }

    /** The remaining nodes but the last: each is left once. */
    private static int sourceAt(int[] to, int column, int last) {
        int skipped = 0;
        for (int node : to) {
            if (node != last) {
                skipped++;
                if (skipped == column) {
                    return node;
                }
            }
        }
        return last;
    }

    long cost() {
        long[] rowPrice = new long[size + 1];
        long[] columnPrice = new long[size + 1];
        int[] rowOf = new int[size + 1];
        for (int row = 1; row <= size; row++) {
            augment(row, rowPrice, columnPrice, rowOf);
        }
        return Math.max(0, -columnPrice[0]);
    }

    private void augment(int row, long[] rowPrice, long[] columnPrice, int[] rowOf) {
        long[] slack = new long[size + 1];
        Arrays.fill(slack, Long.MAX_VALUE);
        boolean[] seen = new boolean[size + 1];
        int[] way = new int[size + 1];
        rowOf[0] = row;
        int column = 0;
        while (rowOf[column] != 0) {
            seen[column] = true;
            column = step(column, slack, seen, way, rowPrice, columnPrice, rowOf);
        }
        while (column != 0) {
            int previous = way[column];
            rowOf[column] = rowOf[previous];
            column = previous;
        }
    }

    private int step(
            int column, long[] slack, boolean[] seen, int[] way, long[] rowPrice, long[] columnPrice, int[] rowOf) {
        int row = rowOf[column];
        long least = Long.MAX_VALUE;
        int next = 0;
        for (int other = 1; other <= size; other++) {
            if (!seen[other]) {
                long reduced = cost[row - 1][other - 1] - rowPrice[row] - columnPrice[other];
                if (reduced < slack[other]) {
                    slack[other] = reduced;
                    way[other] = column;
                }
                if (slack[other] < least) {
                    least = slack[other];
                    next = other;
                }
            }
        }
        for (int other = 0; other <= size; other++) {
            if (seen[other]) {
                rowPrice[rowOf[other]] += least;
                columnPrice[other] -= least;
            } else {
                slack[other] -= least;
            }
        }
        return next;
    }
}

package putback.proof;

import java.util.Arrays;
import java.util.StringTokenizer;
import putback.plan.order.OrderProblem;

/**
 * A sequential ordering problem of TSPLIB: a path from the first node to the last, some nodes before others.
 *
 * <p>The first node is where the order starts; the others are the things to put in order. The bound is the larger of
 * what the remaining nodes cost at least to come to, and at least to go on from.
 */
final class SopFile implements OrderProblem {
    private final int[][] cost;
    private final long[] before;
    private final int last;

    private SopFile(int[][] cost) {
        this.cost = cost;
        this.last = cost.length - 1;
        this.before = new long[last];
        for (int thing = 0; thing < last; thing++) {
            for (int other = 0; other < last; other++) {
                if (cost[thing + 1][other + 1] == -1 && thing != other) {
                    before[thing] |= 1L << other;
                }
            }
        }
    }

    /** Reads the full matrix; a cost of -1 from a to b means that b comes before a. */
    static SopFile parse(String text) {
        String numbers = text.substring(text.indexOf("EDGE_WEIGHT_SECTION") + "EDGE_WEIGHT_SECTION".length());
        StringTokenizer words = new StringTokenizer(numbers);
        int size = Integer.parseInt(words.nextToken());
        int[][] cost = new int[size][size];
        for (int i = 0; i < size * size; i++) {
            cost[i / size][i % size] = Integer.parseInt(words.nextToken());
        }
        return new SopFile(cost);
    }

    @Override
    public int size() {
        return last;
    }

    @Override
    public int start() {
        return 0;
    }

    @Override
    public long ready(long done) {
        long ready = 0;
        for (int thing = 0; thing < last; thing++) {
            if ((done >> thing & 1) == 0 && (before[thing] & ~done) == 0) {
                ready |= 1L << thing;
            }
        }
        return ready;
    }

    @Override
    public long cost(int state, int thing) {
        return cost[state][thing + 1];
    }

    @Override
    public int after(int state, int thing) {
        return thing + 1;
    }

    @Override
    public long bound(long done, int state) {
        int[] nodes = new int[last + 1];
        int count = 0;
        for (int thing = 0; thing < last; thing++) {
            if ((done >> thing & 1) == 0) {
                nodes[count++] = thing + 1;
            }
        }
        return count == 0 ? 0 : new Assignment(cost, state, Arrays.copyOf(nodes, count)).cost();
    }
}

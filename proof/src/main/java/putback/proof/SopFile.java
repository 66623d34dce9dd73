package putback.proof;

import java.util.Arrays;
import java.util.StringTokenizer;
import putback.plan.order.OrderProblem;

/**
 * A sequential ordering problem of TSPLIB: a path from the first node to the last, some nodes before others.
 *
 * <p>The first node is where the order starts; the others are the things to put in order. The bound is the
 * cheapest assignment of a node before to each remaining node; edges that pass over a node that must lie between, and edges
 * from the present node to one that is not ready, are not in it.
 */
public final class SopFile implements OrderProblem {
    private final int[][] cost;
    private final int[][] direct;
    private final long[] before;
    private final int last;

    private SopFile(int[][] cost) {
        this.cost = cost;
        this.direct = direct(cost);
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

    /** The costs, with -1 wherever the one node cannot follow the other at once. */
    private static int[][] direct(int[][] cost) {
        int size = cost.length;
        boolean[][] before = new boolean[size][size];
        for (int i = 0; i < size * size; i++) {
            before[i / size][i % size] = i / size != i % size && cost[i % size][i / size] == -1;
        }
        for (int between = 0; between < size; between++) {
            for (int i = 0; i < size * size; i++) {
                before[i / size][i % size] |= before[i / size][between] && before[between][i % size];
            }
        }
        int[][] direct = new int[size][size];
        for (int i = 0; i < size * size; i++) {
            direct[i / size][i % size] = passesOver(before, i / size, i % size) ? -1 : cost[i / size][i % size];
        }
        return direct;
    }

    private static boolean passesOver(boolean[][] before, int from, int to) {
        boolean passes = before[to][from];
        for (int between = 0; between < before.length; between++) {
            passes |= before[from][between] && before[between][to];
        }
        return passes;
    }

    /** One of the files that come with the program. */
    public static SopFile published(String name) {
        return parse(Files.text("planning/sop/" + name + ".sop"));
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

    /** Below 0 where the thing has to come before what the state stands for. */
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
        return count == 0 ? 0 : new Assignment(direct, state, Arrays.copyOf(nodes, count), ready(done)).cost();
    }
}

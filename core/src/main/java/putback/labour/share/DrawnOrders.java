package putback.labour.share;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import putback.quantity.Minutes;

/**
 * Shapley values from orders drawn at random: each order's shares add up exactly, so their mean does too. Every order is
 * also taken backwards, which cancels what only depends on which of two jobs comes first.
 */
final class DrawnOrders {
    private static final double TWO_SIDED_95 = 1.96;

    private final int jobs;
    private final Map<Long, Long> cost;
    private final long[] sum;
    private final double[] square;

    private DrawnOrders(int jobs, Map<Long, Long> cost) {
        this.jobs = jobs;
        this.cost = cost;
        sum = new long[jobs];
        square = new double[jobs];
    }

    /**
     * @param pairs how many orders, 2 or more, each of them taken both ways
     */
    static Shares shares(int jobs, GroupWork work, int pairs, long seed) {
        List<int[]> drawn = drawn(jobs, pairs, seed);
        DrawnOrders sums = new DrawnOrders(jobs, costs(jobs, drawn, work));
        for (int[] order : drawn) {
            sums.add(order);
        }
        return sums.shares(pairs);
    }

    private static List<int[]> drawn(int jobs, int pairs, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        int[] order = new int[jobs];
        for (int i = 0; i < jobs; i++) {
            order[i] = i;
        }
        List<int[]> drawn = new ArrayList<>();
        for (int i = 0; i < pairs; i++) {
            shuffle(order, random);
            drawn.add(order.clone());
        }
        return drawn;
    }

    /** Of every group that is asked for: the beginnings of the orders, each job alone, and all. */
    private static Map<Long, Long> costs(int jobs, List<int[]> drawn, GroupWork work) {
        Set<Long> groups = new HashSet<>();
        for (int[] order : drawn) {
            addBeginnings(order, groups);
            addBeginnings(backwards(order), groups);
        }
        for (int job = 0; job < jobs; job++) {
            groups.add(1L << job);
        }
        return groups.parallelStream().collect(Collectors.toMap(group -> group, group -> work.of(group)
                .millionths()));
    }

    private static void addBeginnings(int[] order, Set<Long> groups) {
        long group = 0;
        for (int job : order) {
            group |= 1L << job;
            groups.add(group);
        }
    }

    private static void shuffle(int[] order, SplittableRandom random) {
        for (int i = order.length - 1; i > 0; i--) {
            int other = random.nextInt(i + 1);
            int kept = order[i];
            order[i] = order[other];
            order[other] = kept;
        }
    }

    private void add(int[] order) {
        long[] adds = new long[jobs];
        adds(order, adds);
        adds(backwards(order), adds);
        for (int job = 0; job < jobs; job++) {
            sum[job] = Math.addExact(sum[job], adds[job]);
            square[job] += (double) adds[job] * adds[job];
        }
    }

    private void adds(int[] order, long[] adds) {
        long group = 0;
        long before = 0;
        for (int job : order) {
            group |= 1L << job;
            long now = cost(group);
            adds[job] += now - before;
            before = now;
        }
    }

    private static int[] backwards(int[] order) {
        int[] backwards = new int[order.length];
        for (int i = 0; i < order.length; i++) {
            backwards[i] = order[order.length - 1 - i];
        }
        return backwards;
    }

    private long cost(long group) {
        return Objects.requireNonNull(cost.get(group));
    }

    private Shares shares(int pairs) {
        BigInteger[] values = new BigInteger[jobs];
        List<Minutes> alone = new ArrayList<>();
        List<Minutes> error = new ArrayList<>();
        for (int job = 0; job < jobs; job++) {
            values[job] = BigInteger.valueOf(sum[job]);
            alone.add(new Minutes(cost(1L << job)));
            double mean = (double) sum[job] / pairs;
            double variance = Math.max(0, square[job] / pairs - mean * mean) * pairs / (pairs - 1);
            error.add(new Minutes((long) Math.ceil(TWO_SIDED_95 * Math.sqrt(variance / pairs) / 2)));
        }
        long total = cost((1L << jobs) - 1);
        return new Shares(Rounded.toTotal(values, BigInteger.valueOf(2L * pairs), total), alone, false, error);
    }
}

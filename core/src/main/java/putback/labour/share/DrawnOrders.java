package putback.labour.share;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import putback.quantity.Minutes;

/** Shapley values from orders drawn at random: each order's shares add up exactly, so their mean does too. */
final class DrawnOrders {
    private static final double TWO_SIDED_95 = 1.96;

    private final int jobs;
    private final GroupWork work;
    private final Map<Long, Long> known = new HashMap<>();
    private final long[] sum;
    private final double[] square;

    private DrawnOrders(int jobs, GroupWork work) {
        this.jobs = jobs;
        this.work = work;
        sum = new long[jobs];
        square = new double[jobs];
    }

    /**
     * @param orders how many, 2 or more
     */
    static Shares shares(int jobs, GroupWork work, int orders, long seed) {
        DrawnOrders drawn = new DrawnOrders(jobs, work);
        SplittableRandom random = new SplittableRandom(seed);
        int[] order = new int[jobs];
        for (int i = 0; i < jobs; i++) {
            order[i] = i;
        }
        for (int i = 0; i < orders; i++) {
            shuffle(order, random);
            drawn.add(order);
        }
        return drawn.shares(orders);
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
        long group = 0;
        long before = 0;
        for (int job : order) {
            group |= 1L << job;
            long now = cost(group);
            long adds = now - before;
            sum[job] = Math.addExact(sum[job], adds);
            square[job] += (double) adds * adds;
            before = now;
        }
    }

    private long cost(long group) {
        return known.computeIfAbsent(group, one -> work.of(one).millionths());
    }

    private Shares shares(int orders) {
        BigInteger[] values = new BigInteger[jobs];
        List<Minutes> alone = new ArrayList<>();
        List<Minutes> error = new ArrayList<>();
        for (int job = 0; job < jobs; job++) {
            values[job] = BigInteger.valueOf(sum[job]);
            alone.add(new Minutes(cost(1L << job)));
            double mean = (double) sum[job] / orders;
            double variance = Math.max(0, square[job] / orders - mean * mean) * orders / (orders - 1);
            error.add(new Minutes((long) Math.ceil(TWO_SIDED_95 * Math.sqrt(variance / orders))));
        }
        long total = cost((1L << jobs) - 1);
        return new Shares(Rounded.toTotal(values, BigInteger.valueOf(orders), total), alone, false, error);
    }
}

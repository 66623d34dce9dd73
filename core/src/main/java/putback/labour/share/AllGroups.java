package putback.labour.share;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import putback.quantity.Minutes;

/** Shapley values from the work of every group, in whole numbers until the last division. */
final class AllGroups {
    private AllGroups() {}

    static Shares shares(int jobs, GroupWork work) {
        long[] cost = new long[1 << jobs];
        Arrays.parallelSetAll(cost, group -> group == 0 ? 0 : work.of(group).millionths());
        BigInteger[] weight = weights(jobs);
        BigInteger[] values = new BigInteger[jobs];
        List<Minutes> alone = new ArrayList<>();
        for (int job = 0; job < jobs; job++) {
            values[job] = value(job, jobs, cost, weight);
            alone.add(new Minutes(cost[1 << job]));
        }
        List<Minutes> minutes = Rounded.toTotal(values, factorial(jobs), cost[cost.length - 1]);
        return new Shares(minutes, alone, true, Collections.nCopies(jobs, Minutes.ZERO));
    }

    /** The value times n!, from what the job adds to each group, gathered by the size of the group. */
    private static BigInteger value(int job, int jobs, long[] cost, BigInteger[] weight) {
        BigInteger[] bySize = new BigInteger[jobs];
        Arrays.fill(bySize, BigInteger.ZERO);
        for (int group = 0; group < cost.length; group++) {
            if ((group >> job & 1) == 0) {
                int size = Integer.bitCount(group);
                bySize[size] =
                        bySize[size].add(BigInteger.valueOf(Math.subtractExact(cost[group | 1 << job], cost[group])));
            }
        }
        BigInteger sum = BigInteger.ZERO;
        for (int size = 0; size < jobs; size++) {
            sum = sum.add(weight[size].multiply(bySize[size]));
        }
        return sum;
    }

    /** In how many orders exactly a group of a size comes before a job: s! (n - s - 1)!. */
    private static BigInteger[] weights(int jobs) {
        BigInteger[] weights = new BigInteger[jobs];
        for (int size = 0; size < jobs; size++) {
            weights[size] = factorial(size).multiply(factorial(jobs - size - 1));
        }
        return weights;
    }

    private static BigInteger factorial(int n) {
        BigInteger product = BigInteger.ONE;
        for (int i = 2; i <= n; i++) {
            product = product.multiply(BigInteger.valueOf(i));
        }
        return product;
    }
}

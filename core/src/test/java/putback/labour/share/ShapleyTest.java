package putback.labour.share;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import putback.quantity.Minutes;
import putback.quantity.Parsed;

class ShapleyTest {
    @Test
    void exactShares_areTheMeanOverAllOrders() {
        for (long seed = 1; seed <= 60; seed++) {
            Random random = new Random(seed);
            int jobs = 1 + random.nextInt(6);
            long[] cost = costs(jobs, random);
            Shares shares = shares(jobs, cost);
            double[] sum = new double[jobs];
            int orders = orders(jobs, 0, 0, cost, new ArrayList<>(), sum);
            for (int i = 0; i < jobs; i++) {
                double mean = sum[i] / orders;
                assertThat(Math.abs(shares.minutes().get(i).millionths() - mean))
                        .as("seed " + seed)
                        .isLessThan(1.001);
            }
            assertThat(shares.total().millionths()).as("seed " + seed).isEqualTo(cost[cost.length - 1]);
            assertThat(shares.exact()).isTrue();
        }
    }

    @Test
    void sharesThatDoNotDivide_stillAddUp() {
        Shares shares = value(Shapley.of(3, group -> new Minutes(1), 0));
        assertThat(shares.total()).isEqualTo(new Minutes(1));
    }

    @Test
    void twoThatFreeAPartTogether_mayBearMoreThanAlone() {
        long[] cost = {0, 10, 10, 30};
        Shares shares = shares(2, cost);
        assertThat(shares.minutes()).containsExactly(new Minutes(15), new Minutes(15));
        assertThat(shares.alone()).containsExactly(new Minutes(10), new Minutes(10));
    }

    @Test
    void drawnShares_areWithinTheirErrorOfTheExactOnes() {
        int outside = 0;
        int all = 0;
        for (long seed = 1; seed <= 20; seed++) {
            int jobs = 8;
            long[] cost = costs(jobs, new Random(seed));
            Shares exact = shares(jobs, cost);
            Shares drawn = DrawnOrders.shares(jobs, group -> new Minutes(cost[(int) group]), 1000, seed);
            assertThat(drawn.total()).as("seed " + seed).isEqualTo(exact.total());
            assertThat(drawn.exact()).isFalse();
            for (int i = 0; i < jobs; i++) {
                long off = Math.abs(drawn.minutes().get(i).millionths()
                        - exact.minutes().get(i).millionths());
                outside += off > drawn.error().get(i).millionths() ? 1 : 0;
                all++;
            }
        }
        assertThat(outside).as("outside of " + all).isBetween(0, all / 8);
    }

    @Test
    void thirtyJobs_areDrawn_theSameForTheSameSeed() {
        GroupWork union = group -> Minutes.of("3").times(Long.bitCount(group)).plus(Minutes.of("20"));
        Shares shares = value(Shapley.of(30, union, 7));
        assertThat(shares.exact()).isFalse();
        assertThat(shares.total()).isEqualTo(Minutes.of("110"));
        assertThat(shares).isEqualTo(value(Shapley.of(30, union, 7)));
        assertThat(shares.error()).allSatisfy(one -> assertThat(one).isLessThan(Minutes.of("0.9")));
        assertThat(shares.minutes().get(3).minus(Minutes.of("3.666667")).millionths())
                .isBetween(-900_000L, 900_000L);
    }

    /** Each layer is borne alike by those who need it; pairs that share cancel exactly. */
    @Test
    void pairsThatShare_haveNoError_sinceEveryOrderIsTakenBothWays() {
        GroupWork pairs = group -> {
            Minutes sum = Minutes.ZERO;
            for (int pair = 0; pair < 10; pair++) {
                long both = group >> 2 * pair & 3;
                sum = sum.plus(Minutes.of(both == 0 ? "0" : "6"))
                        .plus(Minutes.of("1").times(Long.bitCount(both)));
            }
            return sum;
        };
        Shares shares = value(Shapley.of(20, pairs, 3));
        assertThat(shares.minutes()).allSatisfy(one -> assertThat(one).isEqualTo(Minutes.of("4")));
        assertThat(shares.error()).allSatisfy(one -> assertThat(one).isLessThan(Minutes.of("0.001")));
    }

    @Test
    void noJobs_andTooMany_areRefused() {
        assertThat(Shapley.of(0, group -> Minutes.ZERO, 0).refusal()).contains("0 jobs");
        assertThat(Shapley.of(61, group -> Minutes.ZERO, 0).refusal()).contains("1 to 60");
    }

    private static long[] costs(int jobs, Random random) {
        long[] cost = new long[1 << jobs];
        for (int i = 1; i < cost.length; i++) {
            cost[i] = random.nextInt(1_000_000_000);
        }
        return cost;
    }

    private static int orders(int jobs, int used, int depth, long[] cost, List<Integer> order, double[] sum) {
        if (depth == jobs) {
            int group = 0;
            for (int job : order) {
                sum[job] += cost[group | 1 << job] - cost[group];
                group |= 1 << job;
            }
            return 1;
        }
        int count = 0;
        for (int job = 0; job < jobs; job++) {
            if ((used >> job & 1) == 0) {
                order.add(job);
                count += orders(jobs, used | 1 << job, depth + 1, cost, order, sum);
                order.remove(order.size() - 1);
            }
        }
        return count;
    }

    private static Shares shares(int jobs, long[] cost) {
        return value(Shapley.of(jobs, group -> new Minutes(cost[(int) group]), 0));
    }

    private static Shares value(Parsed<Shares> parsed) {
        return ((Parsed.Value<Shares>) parsed).value();
    }
}

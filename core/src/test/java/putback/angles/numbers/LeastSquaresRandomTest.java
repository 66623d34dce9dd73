package putback.angles.numbers;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

class LeastSquaresRandomTest {
    private static double[][] numbers(Random random, int rows, int columns) {
        double[][] numbers = new double[rows][columns];
        for (double[] row : numbers) {
            for (int i = 0; i < columns; i++) {
                row[i] = random.nextGaussian();
            }
        }
        return numbers;
    }

    private static double sum(double[] row, double[] at) {
        double sum = 0;
        for (int i = 0; i < at.length; i++) {
            sum += row[i] * at[i];
        }
        return sum;
    }

    private static double missed(double[][] rows, double[] at) {
        double missed = 0;
        for (double[] row : rows) {
            double miss = sum(row, at) - row[at.length];
            missed += miss * miss;
        }
        return missed;
    }

    private static boolean keeps(double[][] above, double[] at, double by) {
        for (double[] row : above) {
            if (sum(row, at) < row[at.length] - by) {
                return false;
            }
        }
        return true;
    }

    @Test
    void bounded_keepsItsLimits_andNothingAllowedIsNearer() {
        int bound = 0;
        for (int seed = 0; seed < 300; seed++) {
            Random random = new Random(seed);
            int size = 1 + random.nextInt(6);
            double[][] rows = numbers(random, size + 3, size + 1);
            double[][] above = numbers(random, 1 + random.nextInt(8), size + 1);
            double[] inside = numbers(random, 1, size)[0];
            for (double[] row : above) {
                row[size] = sum(row, inside) - random.nextDouble();
            }
            double[] best = LeastSquares.bounded(rows, above);
            assertThat(best).as("seed " + seed).isNotNull();
            double[] found = best == null ? new double[0] : best;
            assertThat(keeps(above, found, 1e-8)).as("seed " + seed).isTrue();
            double least = missed(rows, found);
            bound += least > missed(rows, LeastSquares.free(rows)) + 1e-9 ? 1 : 0;
            for (int i = 0; i < 300; i++) {
                double[] other = found.clone();
                for (int j = 0; j < size; j++) {
                    other[j] += Math.pow(10, -3 * random.nextDouble()) * random.nextGaussian();
                }
                if (keeps(above, other, 0)) {
                    assertThat(missed(rows, other)).as("seed " + seed).isGreaterThan(least - 1e-7);
                }
            }
        }
        assertThat(bound).isGreaterThan(50);
    }

    @Test
    void limitsThatContradict_haveNoAnswer() {
        assertThat(LeastSquares.bounded(new double[][] {{1, 0}}, new double[][] {{1, 2}, {-1, -1}}))
                .isNull();
    }

    @Test
    void aLineThroughPoints_isTheOneByHand() {
        double[] line = LeastSquares.free(new double[][] {{1, 0, 1}, {1, 1, 3}, {1, 2, 5.3}});
        assertThat(line[0]).isCloseTo(0.95, within(1e-12));
        assertThat(line[1]).isCloseTo(2.15, within(1e-12));
    }
}

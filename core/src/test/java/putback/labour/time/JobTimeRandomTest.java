package putback.labour.time;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import putback.quantity.Parsed;

/** Adding up on a grid against drawing every step of every job. */
class JobTimeRandomTest {
    private static final int DRAWS = 60_000;

    @Test
    void drawnJobs_areWithinOneInAHundred() {
        for (long seed = 1; seed <= 12; seed++) {
            Random random = new Random(seed);
            double common = random.nextInt(3) * 0.12;
            List<StepTime> steps = steps(random);
            JobTime job = ((Parsed.Value<JobTime>) JobTime.of(steps, common)).value();
            double[] drawn = new double[DRAWS];
            for (int i = 0; i < DRAWS; i++) {
                drawn[i] = draw(steps, common, random);
            }
            Arrays.sort(drawn);
            String as = "seed " + seed;
            for (double chance : new double[] {0.5, 0.8, 0.95}) {
                double seen = drawn[(int) (chance * DRAWS)];
                assertThat(job.quantile(chance)).as(as + " chance " + chance).isCloseTo(seen, within(0.01 * seen));
                assertThat(job.chanceAbove(seen)).as(as).isCloseTo(1 - chance, within(0.01));
            }
            assertThat(job.mean())
                    .as(as)
                    .isCloseTo(Arrays.stream(drawn).average().orElse(0), within(0.01 * job.mean()));
        }
    }

    private static List<StepTime> steps(Random random) {
        List<StepTime> steps = new ArrayList<>();
        int count = 5 + random.nextInt(60);
        for (int i = 0; i < count; i++) {
            steps.add(new StepTime(
                    "s" + i,
                    new Lognormal(0.2 + 5 * random.nextDouble(), 0.1 + 0.4 * random.nextDouble()),
                    random.nextInt(4) == 0
                            ? Seizure.of(0.1 * random.nextDouble(), new Lognormal(5 + 30 * random.nextDouble(), 0.5))
                            : Seizure.NONE));
        }
        return steps;
    }

    private static double draw(List<StepTime> steps, double common, Random random) {
        double sum = 0;
        for (StepTime one : steps) {
            sum += draw(one.time(), random);
            if (random.nextDouble() < one.seizure().chance()) {
                sum += draw(one.seizure().outcomes().get(0).extra(), random);
            }
        }
        return sum * Math.exp(common * random.nextGaussian());
    }

    private static double draw(Lognormal time, Random random) {
        return time.medianMinutes() * Math.exp(time.spread() * random.nextGaussian());
    }
}

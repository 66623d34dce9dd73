package putback.labour.time;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import putback.labour.seized.Attempt;
import putback.labour.seized.Row;
import putback.labour.seized.Seized;
import putback.quantity.Minutes;
import putback.quantity.Parsed;

class JobTimeTest {
    private static final double[] CHANCES = {0.01, 0.1, 0.5, 0.8, 0.9, 0.95, 0.99};

    @Test
    void normal_agreesWithItsKnownFigures() {
        assertThat(Normal.below(1)).isCloseTo(0.8413447460685429, within(1e-14));
        assertThat(Normal.below(1.96)).isCloseTo(0.9750021048517795, within(1e-14));
        assertThat(Normal.below(-3)).isCloseTo(0.0013498980316300933, within(1e-15));
        assertThat(Normal.below(-8)).isCloseTo(6.220960574271785e-16, within(1e-22));
        assertThat(Normal.quantile(0.95)).isCloseTo(1.6448536269514722, within(1e-12));
        assertThat(Normal.below(40)).isEqualTo(1);
    }

    /** A lognormal step on a lognormal car is lognormal again, with spreads added in squares. */
    @Test
    void oneStep_onAnyCar_hasItsClosedForm() {
        for (double spread : new double[] {0.05, 0.25, 0.6, 1.0, 1.5}) {
            for (double common : new double[] {0, 0.15, 0.5}) {
                JobTime job = job(common, StepTime.of("a", 40, spread));
                Lognormal exact = new Lognormal(40, Math.hypot(spread, common));
                for (double chance : CHANCES) {
                    double wanted = exact.quantile(chance);
                    assertThat(job.quantile(chance))
                            .as("spread %s, common %s, chance %s", spread, common, chance)
                            .isCloseTo(wanted, within(Math.max(0.1, 0.001 * wanted)));
                    assertThat(job.chanceAbove(wanted)).isCloseTo(1 - chance, within(0.001));
                }
                assertThat(job.mean()).isCloseTo(exact.mean(), within(1e-9 * exact.mean()));
                assertThat(job.standardDeviation()).isCloseTo(Math.sqrt(exact.variance()), within(1e-9 * exact.mean()));
            }
        }
    }

    @Test
    void stepsWithoutSpread_addUpExactly() {
        JobTime job = job(0, StepTime.of("a", 12.7, 0), StepTime.of("b", 91.6, 0));
        assertThat(job.quantile(0.5)).isCloseTo(104.3, within(1e-4));
        assertThat(job.quantile(0.99)).isCloseTo(104.3, within(1e-4));
        assertThat(job.chanceAbove(104.4)).isZero();
        assertThat(job.chanceAbove(104.2)).isEqualTo(1);
    }

    @Test
    void aSeizureOfFixedLength_isAJump() {
        StepTime step = new StepTime("a", new Lognormal(10, 0), Seizure.of(0.15, new Lognormal(33.33, 0)));
        JobTime job = job(0, step);
        assertThat(job.quantile(0.8)).isCloseTo(10, within(0.1));
        assertThat(job.quantile(0.95)).isCloseTo(43.33, within(0.1));
        assertThat(job.chanceAbove(20)).isCloseTo(0.15, within(1e-9));
        assertThat(job.mean()).isCloseTo(10 + 0.15 * 33.33, within(1e-9));
    }

    @Test
    void aRowOfResorts_isADelay() {
        Seized seized = new Seized(
                BigDecimal.valueOf(60),
                List.of(
                        Attempt.plain("penetrant", Minutes.of("3"), new BigDecimal("0.5")),
                        Attempt.plain("cut", Minutes.of("15"), BigDecimal.ONE)),
                null,
                List.of());
        Row row = ((Parsed.Value<Row>) seized.answer()).value();
        Seizure seizure = Seizure.of(0.2, row, 0);
        assertThat(seizure.mean()).isCloseTo(0.2 * row.expectedMinutes().doubleValue(), within(1e-12));
        JobTime job = job(0, new StepTime("a", new Lognormal(1, 0), seizure));
        assertThat(job.chanceAbove(3)).isCloseTo(0.2, within(1e-9));
        assertThat(job.chanceAbove(10)).isCloseTo(0.1, within(1e-9));
    }

    @Test
    void shares_areOneTogether_largestFirst() {
        JobTime job = job(0.15, StepTime.of("a", 5, 0.25), StepTime.of("b", 30, 0.4), StepTime.of("c", 2, 0));
        assertThat(job.risk().stream().mapToDouble(Share::share).sum()).isCloseTo(1, within(1e-12));
        assertThat(job.risk()).extracting(Share::id).containsExactly("b", "", "a", "c");
    }

    @Test
    void aWholeCar_isAddedUpInMilliseconds() {
        List<StepTime> steps = car(120);
        long start = 0;
        int rounds = 40;
        for (int i = -rounds; i < rounds; i++) {
            start = i == 0 ? System.nanoTime() : start;
            JobTime job = ((Parsed.Value<JobTime>) JobTime.of(steps, 0.15)).value();
            assertThat(job.quantile(0.8)).isPositive();
        }
        double millis = (System.nanoTime() - start) / 1e6 / rounds;
        assertThat(millis).isLessThan(250);
    }

    @Test
    void aTransform_addsAsByHand() {
        java.util.Random random = new java.util.Random(3);
        for (int length : new int[] {1, 2, 3, 64, 65, 500}) {
            double[] a = random.doubles(length).toArray();
            double[] b = random.doubles(2 * length - 1).toArray();
            double[] product = Fourier.product(a, b);
            assertThat(product).hasSize(3 * length - 2);
            for (int k = 0; k < product.length; k++) {
                double sum = 0;
                for (int i = Math.max(0, k - b.length + 1); i <= Math.min(k, length - 1); i++) {
                    sum += a[i] * b[k - i];
                }
                assertThat(product[k]).isCloseTo(sum, within(1e-11));
            }
        }
    }

    @Test
    void longDelaysOnSureSteps_areStillAnsweredSoon() {
        List<StepTime> steps = new ArrayList<>();
        for (int i = 0; i < 120; i++) {
            Seizure seizure = Seizure.of(0.02, new Lognormal(240, 0.6));
            steps.add(new StepTime("s" + i, new Lognormal(1 + i % 3, 0.02), seizure));
        }
        JobTime job = org.junit.jupiter.api.Assertions.assertTimeout(
                java.time.Duration.ofSeconds(20), () -> job(0.1, steps.toArray(new StepTime[0])));
        assertThat(job.quantile(0.999)).isGreaterThan(job.mean());
    }

    /** The grid's own error: eight times finer changes nothing that anyone could read. */
    @Test
    void aFinerGrid_saysTheSame() {
        List<StepTime> steps = car(120);
        for (double common : new double[] {0, 0.15}) {
            JobTime usual = ((Parsed.Value<JobTime>) JobTime.of(steps, common)).value();
            JobTime finer = ((Parsed.Value<JobTime>) JobTime.of(steps, common, 8)).value();
            for (double chance : CHANCES) {
                assertThat(usual.quantile(chance)).isCloseTo(finer.quantile(chance), within(0.1));
            }
        }
    }

    @Test
    void nonsense_isRefusedInWords() {
        assertThat(JobTime.of(List.of(), 0).refusal()).contains("0 steps");
        assertThat(JobTime.of(List.of(StepTime.of("a", -1, 0.1)), 0).refusal()).startsWith("step a takes -1.0");
        assertThat(JobTime.of(List.of(StepTime.of("a", Double.NaN, 0.1)), 0).refusal())
                .startsWith("step a takes NaN");
        assertThat(JobTime.of(List.of(StepTime.of("a", 1, 2)), 0).refusal()).contains("a spread of 2.0");
        assertThat(JobTime.of(List.of(StepTime.of("a", 1, 0)), -1).refusal()).contains("common to the car");
        StepTime odd = new StepTime("a", new Lognormal(1, 0), Seizure.of(1.5, new Lognormal(1, 0)));
        assertThat(JobTime.of(List.of(odd), 0).refusal()).contains("chance of 1.5");
        JobTime job = job(0, StepTime.of("a", 1, 0));
        assertThatThrownBy(() -> job.quantile(1)).isInstanceOf(IllegalArgumentException.class);
    }

    /** A car of steps between 0.3 and 6 minutes, every third of which may be seized. */
    static List<StepTime> car(int count) {
        List<StepTime> steps = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            Lognormal time = new Lognormal(0.3 + i * 37 % 58 / 10.0, 0.25);
            steps.add(new StepTime(
                    "s" + i,
                    time,
                    i % 3 == 0
                            ? new Seizure(
                                    0.06,
                                    List.of(
                                            new Seizure.Outcome(0.7, new Lognormal(6, 0.4)),
                                            new Seizure.Outcome(0.3, new Lognormal(35, 0.4))))
                            : Seizure.NONE));
        }
        return steps;
    }

    private static JobTime job(double common, StepTime... steps) {
        return ((Parsed.Value<JobTime>) JobTime.of(List.of(steps), common)).value();
    }
}

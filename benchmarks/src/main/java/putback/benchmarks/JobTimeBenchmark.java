package putback.benchmarks;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import org.apache.commons.math3.distribution.LogNormalDistribution;
import org.apache.commons.math3.random.Well19937c;
import org.apache.commons.math3.stat.StatUtils;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import putback.labour.alongside.Alongside;
import putback.labour.alongside.Neighbour;
import putback.labour.time.JobTime;
import putback.labour.time.StepTime;
import putback.plan.Plan;
import putback.plan.Planned;
import putback.plan.Planner;
import putback.plan.selection.WantedNames;
import putback.quantity.Parsed;
import putback.sheet.Assembly;
import putback.sheet.Side;
import putback.store.sheets.Read;
import putback.store.sheets.SheetReader;

/** How long a job of 120 steps takes, by adding up distributions and by drawing jobs with a statistics library. */
@State(Scope.Benchmark)
@Fork(1)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class JobTimeBenchmark {
    private static final int STEPS = 120;
    private static final int JOBS = 1_000_000;
    private static final double SPREAD = 0.3;
    private static final double COMMON = 0.15;

    private List<StepTime> steps = List.of();
    private final Plan demo = demo();

    /** Medians of 0.3 to 3.3 minutes. */
    @Setup
    public void makeSteps() {
        steps = new ArrayList<>();
        for (int i = 0; i < STEPS; i++) {
            steps.add(StepTime.of("step " + i, median(i), SPREAD));
        }
    }

    private static double median(int step) {
        return 0.3 + step % 11 * 0.3;
    }

    private static Plan demo() {
        Assembly assembly = ((Read.Sheet) SheetReader.stock("demo-van")).assembly();
        WantedNames.Understood.Clear clear = (WantedNames.Understood.Clear)
                WantedNames.understand(assembly, List.of("spring", "damper", "pads"), Set.of(Side.LEFT, Side.RIGHT));
        return ((Planned.Sound) Planner.plan(assembly, clear.wanted())).plan();
    }

    /** Five percentiles, within 0.1 minute. */
    @Benchmark
    @BenchmarkMode(Mode.AverageTime)
    @Warmup(iterations = 3, time = 1)
    @Measurement(iterations = 5, time = 1)
    public double addingUp() {
        JobTime time = ((Parsed.Value<JobTime>) JobTime.of(steps, COMMON)).value();
        return time.quantile(0.05) + time.quantile(0.5) + time.quantile(0.8) + time.quantile(0.9) + time.quantile(0.95);
    }

    /** The same percentiles of a million jobs drawn, straightforwardly. */
    @Benchmark
    @BenchmarkMode(Mode.SingleShotTime)
    @Warmup(iterations = 1)
    @Measurement(iterations = 2)
    public double drawing() {
        Well19937c random = new Well19937c(1);
        LogNormalDistribution[] each = new LogNormalDistribution[STEPS];
        for (int i = 0; i < STEPS; i++) {
            each[i] = new LogNormalDistribution(random, Math.log(median(i)), SPREAD);
        }
        LogNormalDistribution car = new LogNormalDistribution(random, 0, COMMON);
        double[] jobs = new double[JOBS];
        for (int job = 0; job < JOBS; job++) {
            double sum = 0;
            for (LogNormalDistribution step : each) {
                sum += step.sample();
            }
            jobs[job] = sum * car.sample();
        }
        Arrays.sort(jobs);
        return StatUtils.percentile(jobs, 5)
                + jobs[JOBS / 2]
                + jobs[JOBS / 5 * 4]
                + jobs[JOBS / 10 * 9]
                + jobs[JOBS / 20 * 19];
    }

    /** What else could be renewed on the demonstration's van, two plans for each neighbour. */
    @Benchmark
    @BenchmarkMode(Mode.AverageTime)
    @Warmup(iterations = 3, time = 1)
    @Measurement(iterations = 5, time = 1)
    public List<Neighbour> alongside() {
        return Alongside.of(demo);
    }
}

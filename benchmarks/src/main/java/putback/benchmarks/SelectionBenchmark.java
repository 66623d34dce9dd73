package putback.benchmarks;

import java.util.OptionalLong;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import putback.plan.oracle.SheetGenerator;
import putback.plan.oracle.SheetGenerator.Instance;
import putback.plan.oracle.SolverModel;
import putback.plan.order.CourseSearch;
import putback.plan.order.Courses;
import putback.plan.selection.Effort;
import putback.plan.selection.Selected;
import putback.plan.selection.Selector;

/** Generated sheets of a size: the least work by our own method, by CP-SAT, and work and set-up together. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 2, time = 2)
@Measurement(iterations = 3, time = 2)
@Fork(1)
public class SelectionBenchmark {
    @Param({"25", "50", "100", "200", "300"})
    public int joints;

    /** Whether joints are spread over small corners or all over each other. */
    @Param({"corners", "dense"})
    public String kind = "dense";

    private Instance instance = SheetGenerator.make(0, 8, false);

    /** The first of the generated sheets of this size that can be planned at all; both methods must agree on it. */
    @Setup
    public void makeSheet() {
        for (long seed = 1; ; seed++) {
            Instance made = kind.equals("corners")
                    ? SheetGenerator.makeCorners(seed, joints)
                    : SheetGenerator.make(seed, joints, true);
            if (Selector.least(made.assembly(), made.wanted()) instanceof Selected.Sound sound) {
                long ours = sound.selection().work().millionths();
                OptionalLong theirs = new SolverModel(made.assembly(), made.wanted()).leastWork();
                if (theirs.isEmpty() || theirs.getAsLong() != ours) {
                    throw new IllegalStateException(made + ": " + ours + " against " + theirs);
                }
                instance = made;
                return;
            }
        }
    }

    @Benchmark
    public Selected ourLeastWork() {
        return Selector.least(instance.assembly(), instance.wanted());
    }

    @Benchmark
    public OptionalLong solverLeastWork() {
        return new SolverModel(instance.assembly(), instance.wanted()).leastWork();
    }

    @Benchmark
    public Courses ourWorkAndSetUp() {
        return CourseSearch.best(instance.assembly(), instance.wanted(), Effort.unlimited());
    }
}

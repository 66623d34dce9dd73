package putback.benchmarks;

import java.util.List;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import putback.plan.Planned;
import putback.plan.Planner;
import putback.plan.selection.WantedNames;
import putback.plan.selection.WantedNames.Understood;
import putback.sheet.Assembly;
import putback.sheet.Side;
import putback.store.sheets.Read;
import putback.store.sheets.SheetReader;

/** Usual jobs on the stock sheets: the whole plan with all its steps. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 2, time = 2)
@Measurement(iterations = 3, time = 2)
@Fork(1)
public class StockJobBenchmark {
    @Param({
        "front-strut complete-strut",
        "front-strut strut",
        "twist-beam spring,damper,pads",
        "front-strut bearing",
        "front-brake disc"
    })
    public String job = "";

    @Benchmark
    public Planned plan() {
        int space = job.indexOf(' ');
        Assembly assembly = ((Read.Sheet) SheetReader.stock(job.substring(0, space))).assembly();
        Understood understood = WantedNames.understand(
                assembly, List.of(job.substring(space + 1).split(",", -1)), Set.of(Side.LEFT, Side.RIGHT));
        return Planner.plan(assembly, ((Understood.Clear) understood).wanted());
    }
}

package putback.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import putback.app.json.PlanJson;
import putback.ledger.PlanPromise;
import putback.ledger.PlanStep;
import putback.ledger.Promised;
import putback.plan.Plan;
import putback.plan.Planned;
import putback.plan.Planner;
import putback.plan.selection.WantedNames;
import putback.sheet.Assembly;
import putback.sheet.Side;
import putback.store.sheets.OwingRead;
import putback.store.sheets.OwingReader;
import putback.store.sheets.Read;
import putback.store.sheets.SheetReader;

/** What is read back from a plan's JSON is what the plan promised. */
class PromiseRoundTripTest {
    @TempDir
    Path folder;

    @ParameterizedTest
    @CsvSource({
        "front-strut, arm",
        "front-strut, track-rod-end",
        "front-brake, hose",
        "twist-beam, bush",
        "demo-van, spring"
    })
    void aPlan_promisesTheSame_byWayOfItsJson(String sheet, String part) throws IOException {
        Assembly car = ((Read.Sheet) SheetReader.open(sheet)).assembly();
        WantedNames.Understood wanted = WantedNames.understand(car, List.of(part), Set.of(Side.LEFT, Side.RIGHT));
        Plan plan = ((Planned.Sound) Planner.plan(car, ((WantedNames.Understood.Clear) wanted).wanted())).plan();
        Path file = folder.resolve("plan.json");
        Path none = folder.resolve("none.jsonl");
        Files.writeString(file, PlanJson.of(plan, null));
        Files.writeString(none, "");
        Promised read = ((OwingRead.Sound) OwingReader.read(file.toString(), none.toString())).promised();
        Promised made = PlanPromise.of(plan);
        assertThat(steps(read)).isEqualTo(steps(made));
        assertThat(read.followUps()).isEqualTo(made.followUps());
        assertThat(read.renewed()).isEqualTo(made.renewed());
        assertThat(read.leaves()).isEqualTo(made.leaves());
        assertThat(read.comes()).isEqualTo(made.comes());
        assertThat(read.hung()).isEqualTo(made.hung());
        assertThat(read.names()).isEqualTo(made.names());
    }

    /** Without the reasons, which only the JSON gives, and with limits to a millionth, as the JSON has them. */
    private static List<PlanStep> steps(Promised promised) {
        List<PlanStep> steps = new ArrayList<>();
        for (PlanStep step : promised.steps()) {
            PlanStep.Errand errand = step.errand();
            boolean counts = step.did() == putback.ledger.Did.UNDO;
            steps.add(new PlanStep(
                    step.number(),
                    step.did(),
                    step.joint(),
                    step.part(),
                    step.with(),
                    step.aid(),
                    step.followUp(),
                    step.height(),
                    step.text(),
                    tight(step.tight()),
                    step.newFastener(),
                    counts ? step.count() : 1,
                    step.brings(),
                    errand == null ? null : new PlanStep.Errand(List.of(), errand.height(), errand.follows())));
        }
        return steps;
    }

    private static PlanStep.@Nullable Tight tight(PlanStep.@Nullable Tight tight) {
        return tight == null
                ? null
                : new PlanStep.Tight(
                        tight.torqueNm(),
                        tight.angleDeg(),
                        rounded(tight.leastNm()),
                        rounded(tight.mostNm()),
                        tight.height(),
                        tight.after(),
                        tight.passes());
    }

    private static @Nullable Double rounded(@Nullable Double limit) {
        return limit == null ? null : Double.valueOf(Math.rint(limit * 1e6) / 1e6);
    }
}

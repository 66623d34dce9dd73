package putback.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import putback.app.json.PlanJson;
import putback.app.web.frame.Answer;
import putback.app.web.frame.Garage;
import putback.app.web.frame.Question;
import putback.app.web.frame.Shelf;
import putback.ledger.Event;
import putback.ledger.PartState;
import putback.ledger.PlanPromise;
import putback.ledger.PlanStep;
import putback.ledger.Standing;
import putback.plan.Plan;
import putback.plan.steps.Act;
import putback.plan.steps.Step;
import putback.store.books.Job;
import putback.store.sheets.EventLines;
import putback.store.sheets.EventsRead;

/** The page reckons how a car stands by itself when there is no network: against the ledger's own reckoning. */
@Tag("browser")
class FoldRandomTest {
    private static final String FOLDED = """
            async ([plan, lines]) => {
              const { fold } = await import('/carside/fold.js');
              const parsed = JSON.parse(plan);
              const car = fold(parsed, lines.map((line) => JSON.parse(line)));
              const joints = [...new Set(parsed.steps.map((step) => step.joint).filter(Boolean))];
              return {
                toDo: car.toDo.map((step) => step.n),
                joints: Object.fromEntries(joints.map((joint) => [joint, car.state(joint)])),
                off: [...car.off].sort(),
                aids: [...car.aids.values()].map((on) => on.aid + ' ' + on.part),
                height: car.height,
              };
            }
            """;

    @RegisterExtension
    private static final CarsideBench BENCH = new CarsideBench();

    @ParameterizedTest
    @CsvSource({"demo-van, damper", "front-strut, strut", "front-brake, disc", "twist-beam, spring"})
    void thePage_reckonsAsTheLedgerDoes(String sheet, String renew) {
        Job job = BENCH.job(sheet, renew, "both");
        Plan plan = ((Answer.Planned) Answer.to(Question.of(sheet, List.of(renew), "both"), new Shelf(Garage.UNKNOWN)))
                .plan();
        String json = PlanJson.of(plan, null);
        try (BrowserContext device = BENCH.device(390, 844, ColorScheme.LIGHT)) {
            Page page = BENCH.open(device, job, "Mara");
            for (long seed = 1; seed <= 60; seed++) {
                List<String> lines = lines(plan, new Random(seed));
                Object theirs = page.evaluate(FOLDED, List.of(json, lines));
                assertThat(theirs).as(sheet + ", seed " + seed).isEqualTo(ours(plan, lines));
            }
        }
    }

    private static Map<String, Object> ours(Plan plan, List<String> lines) {
        EventsRead read = EventLines.read("test", String.join("\n", lines));
        List<Event> events = ((EventsRead.Sound) read).events();
        Standing standing = Standing.of(PlanPromise.of(plan), events);
        Map<String, Object> ours = new LinkedHashMap<>();
        ours.put("toDo", standing.toDo().stream().map(PlanStep::number).toList());
        Map<String, Object> joints = new LinkedHashMap<>();
        for (Step step : plan.steps()) {
            if (step.joint() != null) {
                joints.put(
                        step.joint().id(),
                        standing.joints().get(step.joint().id()).word());
            }
        }
        ours.put("joints", joints);
        ours.put(
                "off",
                standing.parts().entrySet().stream()
                        .filter(part -> part.getValue() == PartState.OFF)
                        .map(Map.Entry::getKey)
                        .sorted()
                        .toList());
        ours.put(
                "aids",
                standing.aids().stream().map(on -> on.aid() + " " + on.part()).toList());
        ours.put("height", standing.height() == null ? null : standing.height().word());
        return ours;
    }

    /** Mostly the plan's steps in their order, some left out, doubled, out of turn, taken back, and others' hands at it. */
    private static List<String> lines(Plan plan, Random random) {
        List<String> lines = new ArrayList<>();
        int until = random.nextInt(plan.steps().size()) + 1;
        long second = 0;
        for (int i = 0; i < until; i++) {
            int at = random.nextInt(8) == 0 ? random.nextInt(plan.steps().size()) : i;
            if (random.nextInt(10) > 0) {
                second += random.nextInt(900) - 60;
                lines.add(line(plan.steps().get(at), lines.size(), second, random));
            }
            if (random.nextInt(12) == 0 && !lines.isEmpty()) {
                lines.add("{\"id\":\"e" + lines.size()
                        + "\",\"at\":\"2026-03-02T09:00:00Z\",\"by\":\"Mara\",\"do\":\"correct\"," + "\"corrects\":\"e"
                        + random.nextInt(lines.size()) + "\",\"reason\":\"mistake\"}");
            }
            if (random.nextInt(15) == 0 && !lines.isEmpty()) {
                lines.add(lines.get(random.nextInt(lines.size())));
            }
        }
        return lines;
    }

    private static String line(Step step, int number, long second, Random random) {
        StringBuilder line = new StringBuilder("{\"id\":\"e").append(number).append("\",\"at\":\"");
        line.append(java.time.Instant.parse("2026-03-02T09:00:00Z").plusSeconds(second))
                .append("\",\"by\":\"");
        line.append(random.nextInt(3) == 0 ? "Teo" : "Mara").append("\",\"do\":\"");
        boolean swaps = step.joint() != null && random.nextInt(12) == 0;
        line.append(swaps ? "replace-fastener" : step.act().word()).append('"');
        if (step.joint() != null) {
            line.append(",\"joint\":\"").append(step.joint().id()).append('"');
        }
        if (step.part() != null) {
            line.append(",\"part\":\"").append(step.part().id()).append('"');
        }
        if (step.aid() != null && random.nextInt(4) > 0) {
            line.append(",\"aid\":\"").append(step.aid()).append('"');
        }
        if (step.followUp() != null) {
            line.append(",\"followUp\":\"").append(step.followUp().id()).append('"');
        }
        if (step.act() == Act.HEIGHT) {
            line.append(",\"height\":\"").append(step.height().word()).append('"');
        }
        return line.append('}').toString();
    }
}

package putback.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import putback.plan.Plan;
import putback.plan.Planned;
import putback.plan.Planner;
import putback.plan.steps.ASheet;
import putback.plan.steps.Cars;
import putback.sheet.Assembly;

/** Folding all events in one go gives what folding them one by one gives, corrections and repetitions included. */
class StandingRandomTest {
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void inOneGo_andOneByOne_areTheSame(long seed) {
        Random random = new Random(seed);
        Promised promised = PlanPromise.of(plan());
        for (int job = 0; job < 25; job++) {
            String name = "seed " + seed + ", job " + job;
            List<Event> events = events(promised, random);
            Standing oneByOne = Standing.before(promised);
            for (int i = 0; i < events.size(); i++) {
                Standing before = oneByOne;
                List<Object> was = shown(before);
                oneByOne = oneByOne.after(events.get(i));
                assertThat(shown(before)).as(name + ", event " + i).isEqualTo(was);
                if (i % 7 == 0) {
                    assertThat(shown(oneByOne))
                            .as(name + ", event " + i)
                            .isEqualTo(shown(Standing.of(promised, events.subList(0, i + 1))));
                }
            }
            assertThat(shown(oneByOne)).as(name).isEqualTo(shown(Standing.of(promised, events)));
        }
    }

    private static Plan plan() {
        Assembly car = Cars.strut();
        return ((Planned.Sound) Planner.plan(car, ASheet.wanted(car, "left.strut", "left.hose"))).plan();
    }

    private static List<Object> shown(Standing standing) {
        return List.of(
                standing.events(),
                standing.joints(),
                standing.parts(),
                List.copyOf(standing.renewed()),
                standing.aids(),
                String.valueOf(standing.height()),
                standing.fastenersOut(),
                standing.fastenersReplaced(),
                standing.wrenchUses(),
                standing.toDo(),
                standing.last(),
                standing.owing());
    }

    private static List<Event> events(Promised promised, Random random) {
        List<Event> events = new ArrayList<>();
        for (PlanStep step : promised.steps()) {
            if (random.nextInt(9) > 0) {
                events.add(AnEvent.of(step)
                        .id("e" + events.size())
                        .wrench("W" + random.nextInt(2))
                        .event());
            }
        }
        for (int odd = random.nextInt(12); odd > 0; odd--) {
            int at = random.nextInt(events.size());
            Event other = events.get(random.nextInt(events.size()));
            PlanStep step = promised.steps().get(random.nextInt(promised.steps().size()));
            events.add(
                    at,
                    switch (random.nextInt(3)) {
                        case 0 -> other;
                        case 1 ->
                            AnEvent.of(Did.CORRECT)
                                    .corrects(String.valueOf(other.id()))
                                    .reason("ticked by mistake")
                                    .id("c" + odd)
                                    .event();
                        default -> AnEvent.of(step).id("o" + odd).event();
                    });
        }
        return events;
    }
}

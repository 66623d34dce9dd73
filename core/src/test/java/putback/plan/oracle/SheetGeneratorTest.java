package putback.plan.oracle;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.OptionalLong;
import org.junit.jupiter.api.Test;
import putback.plan.oracle.SheetGenerator.Instance;

class SheetGeneratorTest {
    private static final int SHEETS = 200;

    @Test
    void everyRule_occursInManySheets() {
        Occurrences occurrences = new Occurrences();
        for (long seed = 0; seed < SHEETS; seed++) {
            occurrences.add(SheetGenerator.make(seed, 24, seed % 2 == 0));
        }
        assertThat(occurrences.counts())
                .allSatisfy((rule, times) -> assertThat(times).as(rule).isGreaterThan(SHEETS / 40));
    }

    @Test
    void sameSeed_makesTheSameSheet() {
        Instance once = SheetGenerator.make(7, 40, true);
        assertThat(SheetGenerator.make(7, 40, true)).isEqualTo(once);
    }

    @Test
    void obviousJob_isOftenNotTheCheapest() {
        int solved = 0;
        int dearer = 0;
        int stuck = 0;
        int locked = 0;
        for (long seed = 0; seed < SHEETS; seed++) {
            Instance instance = SheetGenerator.make(seed, 16, seed % 2 == 0);
            OptionalLong least = new SolverModel(instance.assembly(), instance.wanted()).leastWork();
            OptionalLong greedy = new Greedy(instance.assembly(), instance.wanted()).work();
            if (least.isEmpty()) {
                locked++;
                assertThat(greedy).as(instance.toString()).isEmpty();
            } else if (greedy.isEmpty()) {
                stuck++;
            } else {
                solved++;
                assertThat(greedy.getAsLong()).as(instance.toString()).isGreaterThanOrEqualTo(least.getAsLong());
                dearer += greedy.getAsLong() > least.getAsLong() ? 1 : 0;
            }
        }
        System.out.printf(
                "%d sheets: %d locked; a greedy mechanic gets stuck in %d and is dearer in %d of the other %d%n",
                SHEETS, locked, stuck, dearer, solved);
        assertThat(locked).isGreaterThan(SHEETS / 40);
        assertThat(dearer + stuck).isGreaterThan(SHEETS / 10);
    }
}

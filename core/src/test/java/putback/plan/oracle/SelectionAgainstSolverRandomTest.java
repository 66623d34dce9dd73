package putback.plan.oracle;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.OptionalLong;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import putback.plan.oracle.SheetGenerator.Instance;
import putback.plan.selection.Selected;
import putback.plan.selection.Selection;
import putback.plan.selection.Selector;

/** The choice of joints against a general solver that knows the rules only from the design. */
class SelectionAgainstSolverRandomTest {
    private final Occurrences occurrences = new Occurrences();
    private int sheets;

    @Test
    void leastWork_isWhatTheSolverFinds() {
        for (long seed = 0; seed < 300; seed++) {
            compare(SheetGenerator.make(seed, 6 + (int) (seed % 19), seed % 2 == 0));
        }
        for (long seed = 1000; seed < 1160; seed++) {
            compare(SheetGenerator.make(seed, 25 + (int) (seed % 16), seed % 2 == 0));
        }
        for (long seed = 2000; seed < 2060; seed++) {
            compare(SheetGenerator.make(seed, 41 + (int) (seed % 20), seed % 2 == 0));
        }
        System.out.printf("%d sheets against the solver; how many have: %s%n", sheets, occurrences.counts());
    }

    @ParameterizedTest
    @CsvSource({"7001, 100", "7004, 100", "7001, 200", "7004, 200", "7008, 200", "7000, 300", "7001, 300", "7007, 300"})
    void leastWork_isWhatTheSolverFinds_inWholeCars(long seed, int joints) {
        compare(SheetGenerator.make(seed, joints, seed % 2 == 0));
    }

    private void compare(Instance instance) {
        OptionalLong least = new SolverModel(instance.assembly(), instance.wanted()).leastWork();
        Selected selected = Selector.least(instance.assembly(), instance.wanted());
        OptionalLong greedy = new Greedy(instance.assembly(), instance.wanted()).work();
        sheets++;
        occurrences.add(instance);
        occurrences.count("locked", least.isEmpty());
        occurrences.count("greedy stuck", least.isPresent() && greedy.isEmpty());
        if (selected instanceof Selected.Sound sound) {
            Selection selection = sound.selection();
            assertThat(OptionalLong.of(selection.work().millionths()))
                    .as(instance.toString())
                    .isEqualTo(least);
            assertThat(SelectionCheck.complaints(instance.assembly(), instance.wanted(), selection))
                    .as(instance.toString())
                    .isEmpty();
            occurrences.count("aside used", !selection.aside().isEmpty());
            occurrences.count("parts hung", !selection.hung().isEmpty());
            occurrences.count("parts spoiled", !selection.spoiled().isEmpty());
            occurrences.count("greedy dearer", greedy.isPresent() && greedy.getAsLong() > least.orElseThrow());
        } else {
            assertThat(least).as(instance.toString()).isEmpty();
        }
    }
}

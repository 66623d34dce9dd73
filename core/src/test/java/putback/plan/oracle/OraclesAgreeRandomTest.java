package putback.plan.oracle;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.OptionalLong;
import org.junit.jupiter.api.Test;
import putback.plan.oracle.SheetGenerator.Instance;

/** Three ways to the least, which share the rules as written down once and nothing else. */
class OraclesAgreeRandomTest {
    private static final int SHEETS = 200;
    private static final int MOST_JOINTS = 10;

    @Test
    void leastWork_isTheSameByEveryWay() {
        for (long seed = 0; seed < SHEETS; seed++) {
            Instance instance = small(seed);
            OptionalLong tried = new BruteForce(instance.assembly(), instance.wanted()).leastWork();
            assertThat(new SolverModel(instance.assembly(), instance.wanted()).leastWork())
                    .as("cuts, " + instance)
                    .isEqualTo(tried);
            assertThat(new OrderModel(instance.assembly(), instance.wanted()).leastWork())
                    .as("order, " + instance)
                    .isEqualTo(tried);
        }
    }

    @Test
    void leastObjective_isTheSameByEveryWay() {
        for (long seed = SHEETS; seed < 2 * SHEETS; seed++) {
            Instance instance = small(seed);
            assertThat(new OrderModel(instance.assembly(), instance.wanted()).leastObjective())
                    .as(instance.toString())
                    .isEqualTo(new BruteForce(instance.assembly(), instance.wanted()).leastObjective());
        }
    }

    private static Instance small(long seed) {
        int joints = 4 + (int) (seed % 5);
        Instance instance = SheetGenerator.make(seed, joints, seed % 3 == 0);
        return instance.assembly().joints().size() <= MOST_JOINTS ? instance : SheetGenerator.make(seed, joints, false);
    }
}

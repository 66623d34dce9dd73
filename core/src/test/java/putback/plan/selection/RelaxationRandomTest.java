package putback.plan.selection;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.ortools.Loader;
import com.google.ortools.linearsolver.MPConstraint;
import com.google.ortools.linearsolver.MPObjective;
import com.google.ortools.linearsolver.MPSolver;
import com.google.ortools.linearsolver.MPVariable;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** The bound of relaxed choices against a general library for linear programmes. */
class RelaxationRandomTest {
    private static final int MOST = 1000;

    /** What the bound may be short of, of all weights together. */
    private static final double LOST = 1e-6;

    private int impossible;

    @Test
    void theBound_isTheLibrarysLeast_roundedUp() {
        for (long seed = 1; seed <= 1500; seed++) {
            CoverProblem problem = problem(seed);
            Relaxation relaxation = new Relaxation(problem.weight(), MOST, Effort.unlimited());
            int[] fixed = fixedAtFirst(problem, relaxation);
            problem.clauses().forEach(relaxation::add);
            compare(problem, relaxation, fixed);
        }
        assertThat(impossible).isGreaterThan(50);
    }

    @Test
    void theBound_isTheSame_whateverWasFixedAndFreedBefore() {
        for (long seed = 1; seed <= 200; seed++) {
            Random random = new Random(seed);
            CoverProblem problem = seed % 2 == 0 ? CoverProblem.large(seed) : CoverProblem.hard(seed);
            Relaxation relaxation = new Relaxation(problem.weight(), MOST, Effort.unlimited());
            int[] fixed = fixedAtFirst(problem, relaxation);
            int added = 0;
            for (int turn = 0; turn < 12; turn++) {
                for (int i = 0; i < 8 && added < problem.clauses().size(); i++) {
                    relaxation.add(problem.clauses().get(added++));
                }
                int item = random.nextInt(fixed.length);
                if (fixed[item] < 0) {
                    fixed[item] = random.nextInt(2);
                    relaxation.fix(item, fixed[item] == 1);
                } else {
                    fixed[item] = -1;
                    relaxation.free(item);
                }
                compare(problem.withClauses(added), relaxation, fixed);
            }
        }
    }

    @Test
    void theBound_isNeverAboveTheLeastWeightOfAllChoices() {
        for (long seed = 1; seed <= 1500; seed++) {
            CoverProblem problem = CoverProblem.small(seed);
            Relaxation relaxation = new Relaxation(problem.weight(), MOST, Effort.unlimited());
            fixedAtFirst(problem, relaxation);
            problem.clauses().forEach(relaxation::add);
            long least = problem.leastOfAll();
            boolean below = relaxation.solve(problem.none());
            if (least < problem.none()) {
                assertThat(below).as(problem.toString()).isTrue();
                assertThat(relaxation.bound()).as(problem.toString()).isLessThanOrEqualTo(least);
            }
        }
    }

    /** Long clauses over dear items, many of them decided: where whole numbers could grow too large for their type. */
    @Test
    void theBound_holds_whereNumbersAreLarge() {
        for (long seed = 1; seed <= 60; seed++) {
            CoverProblem problem = CoverProblem.vast(seed);
            Relaxation relaxation = new Relaxation(problem.weight(), MOST, Effort.unlimited());
            int[] fixed = fixedAtFirst(problem, relaxation);
            problem.clauses().forEach(relaxation::add);
            compare(problem, relaxation, fixed);
        }
    }

    private static CoverProblem problem(long seed) {
        return switch ((int) (seed % 3)) {
            case 0 -> CoverProblem.small(seed);
            case 1 -> CoverProblem.large(seed);
            default -> CoverProblem.hard(seed);
        };
    }

    private static int[] fixedAtFirst(CoverProblem problem, Relaxation relaxation) {
        int[] fixed = new int[problem.weight().length];
        for (int item = 0; item < fixed.length; item++) {
            fixed[item] = problem.in().get(item) ? 1 : problem.out().get(item) ? 0 : -1;
            if (fixed[item] >= 0) {
                relaxation.fix(item, fixed[item] == 1);
            }
        }
        return fixed;
    }

    private void compare(CoverProblem problem, Relaxation relaxation, int[] fixed) {
        OptionalDouble library = library(problem, fixed);
        boolean below = relaxation.solve(problem.none());
        if (library.isEmpty()) {
            impossible++;
            assertThat(below).as(problem.toString()).isFalse();
            return;
        }
        double least = library.getAsDouble();
        double lost = LOST * problem.none();
        double doubt = problem.none() < 1e6 ? -1e-6 : 1e-9 * problem.none();
        assertThat((double) relaxation.bound())
                .as(problem.toString())
                .isGreaterThan(least - lost)
                .isLessThan(least + 1 + doubt);
    }

    private static OptionalDouble library(CoverProblem problem, int[] fixed) {
        MPSolver solver = MPSolver.createSolver("GLOP");
        MPVariable[] share = new MPVariable[fixed.length];
        MPObjective objective = solver.objective();
        for (int item = 0; item < share.length; item++) {
            share[item] = solver.makeNumVar(fixed[item] == 1 ? 1 : 0, fixed[item] == 0 ? 0 : 1, "");
            objective.setCoefficient(share[item], (double) problem.weight()[item]);
        }
        for (Clause clause : problem.clauses()) {
            MPConstraint row = solver.makeConstraint(1 - clause.given().length, MPSolver.infinity());
            for (int item : clause.oneOf()) {
                row.setCoefficient(share[item], 1);
            }
            for (int item : clause.given()) {
                row.setCoefficient(share[item], -1);
            }
        }
        objective.setMinimization();
        MPSolver.ResultStatus status = solver.solve();
        if (status == MPSolver.ResultStatus.INFEASIBLE) {
            return OptionalDouble.empty();
        }
        assertThat(status).as(problem.toString()).isEqualTo(MPSolver.ResultStatus.OPTIMAL);
        return OptionalDouble.of(objective.value());
    }

    static {
        Loader.loadNativeLibraries();
    }
}

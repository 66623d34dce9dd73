package putback.plan.selection;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Both ways to find a cover of least weight against trying every choice. */
class CoverRandomTest {
    private static final long BUDGET = 100_000;
    private static final int SMALL = 3000;

    @Test
    void theTree_findsTheLeastWeightOfAllChoices() {
        for (long seed = 1; seed <= SMALL; seed++) {
            CoverProblem problem = CoverProblem.small(seed);
            check(problem, tree(problem, problem.clauses().size(), problem.none()), problem.leastOfAll());
        }
    }

    @Test
    void theTree_findsTheSame_whenClausesTurnUpOnlyWhenBroken() {
        for (long seed = 1; seed <= SMALL; seed++) {
            CoverProblem problem = CoverProblem.small(seed);
            check(problem, tree(problem, problem.clauses().size() / 3, problem.none()), problem.leastOfAll());
        }
    }

    @Test
    void thePlainSearch_findsTheLeastWeightOfAllChoices() {
        for (long seed = 1; seed <= SMALL; seed++) {
            CoverProblem problem = CoverProblem.small(seed);
            check(problem, plain(problem, problem.none()), problem.leastOfAll());
        }
    }

    @Test
    void nothingIsFound_whereTheLimitIsTheLeastWeight() {
        for (long seed = 1; seed <= SMALL; seed++) {
            CoverProblem problem = CoverProblem.small(seed);
            long least = problem.leastOfAll();
            assertThat(plain(problem, least)).as(problem.toString()).isNull();
            assertThat(tree(problem, problem.clauses().size(), least))
                    .as(problem.toString())
                    .isNull();
        }
    }

    @Test
    void bothWays_findTheSameWeight_onLargerCovers() {
        for (long seed = 1; seed <= 400; seed++) {
            CoverProblem problem = seed % 2 == 0 ? CoverProblem.large(seed) : CoverProblem.hard(seed);
            long least = least(problem);
            check(problem, plain(problem, problem.none()), least);
            check(problem, tree(problem, problem.clauses().size(), problem.none()), least);
            check(problem, tree(problem, problem.clauses().size() / 4, problem.none()), least);
        }
    }

    /** An answer that was given up on is never better than the truth, and an answer that was not is the truth. */
    @Test
    void aSearchThatIsNotExhausted_hasTheLeastWeight_howeverSmallItsBudget() {
        int exhausted = 0;
        for (long seed = 1; seed <= SMALL; seed++) {
            CoverProblem problem = CoverProblem.small(seed);
            CoverSolver solver = new CoverSolver(problem.weight(), 1 + seed % 4);
            Cover cover = solver.least(problem.clauses(), problem.in(), problem.out(), problem.none());
            if (solver.exhausted()) {
                exhausted++;
                assertThat(cover == null || cover.weight() >= problem.leastOfAll())
                        .as(problem.toString())
                        .isTrue();
            } else {
                check(problem, cover, problem.leastOfAll());
            }
        }
        assertThat(exhausted).isGreaterThan(100);
    }

    @Test
    void whatIsFoundWithLittleEffort_isNoLighterThanTheLeast_andItsBoundNoHeavier() {
        int unproven = 0;
        for (long seed = 1; seed <= 200; seed++) {
            CoverProblem problem = CoverProblem.hard(seed);
            List<Clause> known = new ArrayList<>(problem.clauses());
            CoverTree tree = new CoverTree(problem.weight(), known, chosen -> false, Effort.of(seed % 48 * 20_000));
            Cover cover = tree.least(problem.in(), problem.out(), problem.none());
            long found = cover == null ? problem.none() : cover.weight();
            assertThat(least(problem)).as(problem.toString()).isBetween(Math.min(found, tree.bound()), found);
            if (tree.bound() >= found) {
                check(problem, cover, least(problem));
            } else {
                unproven++;
            }
        }
        assertThat(unproven).isBetween(20, 180);
    }

    @Test
    void theSameProblem_hasTheSameAnswerTwice() {
        for (long seed = 1; seed <= 100; seed++) {
            CoverProblem problem = CoverProblem.hard(seed);
            CoverProblem again = CoverProblem.hard(seed);
            assertThat(tree(again, 5, again.none())).as(problem.toString()).isEqualTo(tree(problem, 5, problem.none()));
            assertThat(plain(again, again.none())).as(problem.toString()).isEqualTo(plain(problem, problem.none()));
        }
    }

    private static long least(CoverProblem problem) {
        Cover cover = plain(problem, problem.none());
        return cover == null ? problem.none() : cover.weight();
    }

    private static @Nullable Cover plain(CoverProblem problem, long limit) {
        CoverSolver solver = new CoverSolver(problem.weight(), BUDGET);
        Cover cover = solver.least(problem.clauses(), problem.in(), problem.out(), limit);
        assertThat(solver.exhausted()).as(problem.toString()).isFalse();
        return cover;
    }

    /** Only the first clauses are known from the start. */
    private static @Nullable Cover tree(CoverProblem problem, int first, long limit) {
        List<Clause> known = new ArrayList<>(problem.clauses().subList(0, first));
        CoverTree.Doubts doubts = chosen -> {
            int before = known.size();
            for (Clause clause : problem.clauses()) {
                if (!CoverProblem.isMet(clause, chosen)) {
                    known.add(clause);
                }
            }
            return known.size() > before;
        };
        return new CoverTree(problem.weight(), known, doubts, Effort.unlimited())
                .least(problem.in(), problem.out(), limit);
    }

    private static void check(CoverProblem problem, @Nullable Cover cover, long least) {
        if (cover == null) {
            assertThat(least).as(problem.toString()).isEqualTo(problem.none());
            return;
        }
        BitSet chosen = cover.items();
        assertThat(problem.isMet(chosen)).as("%s meets %s", chosen, problem).isTrue();
        assertThat(problem.weightOf(chosen)).as("%s of %s", chosen, problem).isEqualTo(cover.weight());
        assertThat(cover.weight()).as("%s of %s", chosen, problem).isEqualTo(least);
    }
}

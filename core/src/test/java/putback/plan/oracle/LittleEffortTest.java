package putback.plan.oracle;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import putback.plan.oracle.SheetGenerator.Instance;
import putback.plan.order.Course;
import putback.plan.order.CourseSearch;
import putback.plan.order.Courses;
import putback.plan.selection.Effort;
import putback.plan.selection.Selected;
import putback.plan.selection.Selector;

/** What becomes of a search that may not go on for long. */
class LittleEffortTest {
    private static final int JOINTS = 100;

    @Test
    void whatIsFoundWithLittleEffort_isNotBelowTheLeast_andItsBoundIsNoHigher() {
        int unproven = 0;
        for (long seed : new long[] {2, 21, 23, 28, 29}) {
            Instance hard = SheetGenerator.make(seed, JOINTS, true);
            Course little = course(hard, Effort.of(10_000_000));
            Selected least = Selector.least(hard.assembly(), hard.wanted());
            assertThat(little.selection().work())
                    .as(hard.toString())
                    .isGreaterThanOrEqualTo(((Selected.Sound) least).selection().work());
            assertThat(little.bound())
                    .as(hard.toString())
                    .isLessThanOrEqualTo(little.selection().work().plus(little.setup()));
            unproven += little.proven() ? 0 : 1;
        }
        assertThat(unproven).isPositive();
    }

    @Test
    void theSameEffort_findsTheSameTwice() {
        Instance hard = SheetGenerator.make(29, JOINTS, true);
        assertThat(course(hard, Effort.of(20_000_000))).isEqualTo(course(hard, Effort.of(20_000_000)));
    }

    private static Course course(Instance instance, Effort effort) {
        return ((Courses.Found) CourseSearch.best(instance.assembly(), instance.wanted(), effort)).course();
    }
}

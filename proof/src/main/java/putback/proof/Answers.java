package putback.proof;

import java.math.BigDecimal;
import putback.plan.order.Course;
import putback.plan.order.CourseSearch;
import putback.plan.order.Courses;
import putback.plan.selection.Effort;
import putback.plan.selection.Selected;
import putback.plan.selection.Selector;
import putback.plan.selection.Wanted;
import putback.sheet.Assembly;

/** What this program answers; -1 where it finds no way. */
final class Answers {
    private static final BigDecimal NO_WAY = BigDecimal.valueOf(-1);

    private Answers() {}

    /** Least work of a selection, set-ups ignored. */
    static BigDecimal work(Assembly assembly, Wanted wanted) {
        return Selector.least(assembly, wanted) instanceof Selected.Sound sound
                ? sound.selection().work().decimal()
                : NO_WAY;
    }

    /** Least work and set-up together. */
    static BigDecimal workAndSetup(Assembly assembly, Wanted wanted) {
        if (CourseSearch.best(assembly, wanted, Effort.unlimited()) instanceof Courses.Found found) {
            Course course = found.course();
            return course.selection().work().plus(course.setup()).decimal();
        }
        return NO_WAY;
    }

    /** What no selection and order can be below. */
    static BigDecimal bound(Assembly assembly, Wanted wanted) {
        return CourseSearch.best(assembly, wanted, Effort.unlimited()) instanceof Courses.Found found
                ? found.course().bound().decimal()
                : NO_WAY;
    }
}

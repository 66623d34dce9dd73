package putback.plan.order;

import putback.plan.selection.Deadlock;

/** The best course, or that there is none. */
public sealed interface Courses {
    record Found(Course course) implements Courses {}

    record None(Deadlock deadlock) implements Courses {}
}

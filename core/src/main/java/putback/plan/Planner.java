package putback.plan;

import java.util.List;
import putback.plan.order.Course;
import putback.plan.order.CourseSearch;
import putback.plan.order.Courses;
import putback.plan.selection.Deadlock;
import putback.plan.selection.Wanted;
import putback.plan.steps.RoundTrip;
import putback.plan.steps.Step;
import putback.plan.steps.StepBuilder;
import putback.quantity.Minutes;
import putback.sheet.Assembly;

/** Plans the round trip with the least work and set-up on the way apart. */
public final class Planner {
    private Planner() {}

    /** The best plan with its proof, or the joints and parts that lock each other. */
    public static Planned plan(Assembly assembly, Wanted wanted) {
        Courses courses = CourseSearch.best(assembly, wanted);
        if (courses instanceof Courses.Found found) {
            return new Planned.Sound(plan(assembly, wanted, found.course()));
        }
        return locked(assembly, ((Courses.None) courses).deadlock());
    }

    private static Plan plan(Assembly assembly, Wanted wanted, Course course) {
        Reasons reasons = Reasons.of(assembly, wanted, course.moves());
        RoundTrip trip = StepBuilder.build(assembly, wanted, course.selection(), course.moves())
                .withWhy(step -> reasons.chain(step, course.moves()));
        List<Step> steps = trip.steps();
        Minutes setup = steps.stream().map(Step::setup).reduce(Minutes.ZERO, Minutes::plus);
        return new Plan(
                assembly,
                wanted,
                course.selection(),
                course.moves(),
                setup,
                course.setup(),
                new Proof(course.proven(), course.bound()),
                steps,
                ToolList.of(steps),
                PartList.of(assembly, wanted, course.selection()),
                Advice.of(assembly, wanted, course.selection()),
                trip.warnings());
    }

    private static Planned locked(Assembly assembly, Deadlock deadlock) {
        return new Planned.Locked(
                deadlock.joints().stream()
                        .map(joint -> assembly.joints().get(joint).id())
                        .toList(),
                deadlock.parts().stream()
                        .map(part -> assembly.parts().get(part).id())
                        .toList(),
                "There is no sound order: " + String.join("; ", deadlock.reasons()) + ".");
    }
}

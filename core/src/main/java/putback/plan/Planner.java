package putback.plan;

import java.util.ArrayList;
import java.util.List;
import putback.plan.order.Attributes;
import putback.plan.order.Course;
import putback.plan.order.CourseSearch;
import putback.plan.order.Courses;
import putback.plan.order.Move;
import putback.plan.selection.Deadlock;
import putback.plan.selection.Effort;
import putback.plan.selection.Wanted;
import putback.plan.steps.RoundTrip;
import putback.plan.steps.Step;
import putback.plan.steps.StepBuilder;
import putback.quantity.Minutes;
import putback.quantity.Parsed;
import putback.sheet.Assembly;
import putback.sheet.Joint;

/** Plans the round trip with the least work and set-up on the way apart. */
public final class Planner {
    /** Some ten seconds of one processor; a whole corner of a car takes a thousandth of it. */
    private static final long MOST_EFFORT = 30_000_000_000L;

    /** Costs are asked for by the dozen. */
    private static final int MANY = 100;

    private Planner() {}

    /** The best plan with its proof, or the joints and parts that lock each other. */
    public static Planned plan(Assembly assembly, Wanted wanted) {
        Courses courses = CourseSearch.best(assembly, wanted, Effort.of(MOST_EFFORT));
        if (courses instanceof Courses.Found found) {
            return new Planned.Sound(plan(assembly, wanted, found.course()));
        }
        return locked(assembly, ((Courses.None) courses).deadlock());
    }

    /** What the best plan takes, without its tools, parts and reasons; or why there is none. */
    public static Parsed<PlanCost> cost(Assembly assembly, Wanted wanted) {
        Courses courses = CourseSearch.best(assembly, wanted, Effort.of(MOST_EFFORT / MANY));
        if (courses instanceof Courses.Found found) {
            Course course = found.course();
            RoundTrip trip = StepBuilder.build(assembly, wanted, course.selection(), course.moves());
            Minutes objective = course.selection().work().plus(sequenceSetup(assembly, trip.moves()));
            return new Parsed.Value<>(new PlanCost(
                    objective, course.bound(), course.selection().work().plus(trip.setup())));
        }
        return new Parsed.Refused<>("there is no sound order");
    }

    /**
     * The same plan with its way apart in another order; its set-up, and with it the objective, may be more.
     *
     * @param moves all of the plan's moves, in a sound order
     */
    public static Plan inOrder(Plan plan, List<Move> moves) {
        Minutes bound = plan.proof().bound();
        return plan(plan.assembly(), plan.wanted(), new Course(plan.selection(), moves, Minutes.ZERO, false, bound));
    }

    private static Plan plan(Assembly assembly, Wanted wanted, Course course) {
        RoundTrip plain = StepBuilder.build(assembly, wanted, course.selection(), course.moves());
        Reasons reasons = Reasons.of(assembly, wanted, plain.moves());
        List<Step> steps = new ArrayList<>();
        Minutes setup = Minutes.ZERO;
        for (Step step : plain.steps()) {
            steps.add(step.withWhy(reasons.chain(step, plain.moves())));
            setup = setup.plus(step.setup());
        }
        Minutes sequence = sequenceSetup(assembly, plain.moves());
        Minutes objective = course.selection().work().plus(sequence);
        return new Plan(
                assembly,
                wanted,
                course.selection(),
                plain.moves(),
                setup,
                sequence,
                new Proof(course.bound().compareTo(objective) >= 0, course.bound()),
                steps,
                ToolList.of(steps),
                PartList.of(assembly, wanted, course.selection()),
                Advice.of(assembly, wanted, course.selection()),
                FastenerDoubts.after(plain.warnings(), steps));
    }

    /** A joint that has to be reached on wheels may have been brought forward, so the order is reckoned anew. */
    private static Minutes sequenceSetup(Assembly assembly, List<Move> moves) {
        List<Joint> order = new ArrayList<>();
        for (Move move : moves) {
            if (move instanceof Move.Open open) {
                order.add(assembly.joints().get(open.joint()));
            }
        }
        return new Minutes(Attributes.setup(order, assembly.sheet().setups()));
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

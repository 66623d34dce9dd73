package putback.plan.oracle;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import putback.plan.Plan;
import putback.plan.Proof;
import putback.plan.order.Move;
import putback.plan.selection.Selection;
import putback.plan.steps.Step;
import putback.quantity.Minutes;
import putback.sheet.Fastener;
import putback.sheet.Height;

/** Spoils a sound plan in one place; null where there is no such place. */
final class Tampering {
    private Tampering() {}

    /** Leaves out the last step like this one. */
    static @Nullable Plan without(Plan plan, Predicate<Step> like) {
        int at = lastAt(plan, like);
        if (at < 0) {
            return null;
        }
        List<Step> steps = new ArrayList<>(plan.steps());
        steps.remove(at);
        return with(plan, steps);
    }

    static @Nullable Plan withoutAll(Plan plan, Predicate<Step> like) {
        List<Step> steps = plan.steps().stream().filter(like.negate()).toList();
        return steps.size() == plan.steps().size() ? null : with(plan, steps);
    }

    /** Changes the last step like this one. */
    static @Nullable Plan changed(Plan plan, Predicate<Step> like, UnaryOperator<Step> change) {
        int at = lastAt(plan, like);
        if (at < 0) {
            return null;
        }
        List<Step> steps = new ArrayList<>(plan.steps());
        steps.set(at, change.apply(steps.get(at)));
        return with(plan, steps);
    }

    /** Moves the last step like this one to just before the first one like that. */
    static @Nullable Plan moved(Plan plan, Predicate<Step> like, Predicate<Step> before) {
        int from = lastAt(plan, like);
        int to = firstAt(plan, before);
        if (to < 0 || from <= to) {
            return null;
        }
        List<Step> steps = new ArrayList<>(plan.steps());
        Step step = steps.remove(from);
        steps.add(to, height(step, steps.get(to).height()));
        return with(plan, steps);
    }

    static @Nullable Plan movedToEnd(Plan plan, Predicate<Step> like) {
        int from = lastAt(plan, like);
        if (from < 0) {
            return null;
        }
        List<Step> steps = new ArrayList<>(plan.steps());
        Step step = steps.remove(from);
        steps.add(height(step, steps.get(steps.size() - 1).height()));
        return with(plan, steps);
    }

    static int firstAt(Plan plan, Predicate<Step> like) {
        for (int i = 0; i < plan.steps().size(); i++) {
            if (like.test(plan.steps().get(i))) {
                return i;
            }
        }
        return -1;
    }

    private static int lastAt(Plan plan, Predicate<Step> like) {
        for (int i = plan.steps().size() - 1; i >= 0; i--) {
            if (like.test(plan.steps().get(i))) {
                return i;
            }
        }
        return -1;
    }

    private static Plan with(Plan plan, List<Step> steps) {
        List<Step> numbered = new ArrayList<>();
        for (Step step : steps) {
            numbered.add(copy(
                    step,
                    numbered.size() + 1,
                    step.height(),
                    step.fastener(),
                    step.minutes(),
                    step.with().isEmpty()));
        }
        return new Plan(
                plan.assembly(),
                plan.wanted(),
                plan.selection(),
                plan.moves(),
                plan.setup(),
                plan.sequenceSetup(),
                plan.proof(),
                numbered,
                plan.tools(),
                plan.parts(),
                plan.advice(),
                plan.warnings());
    }

    static Plan with(Plan plan, Selection selection, List<Move> moves, Minutes sequenceSetup, Proof proof) {
        return new Plan(
                plan.assembly(),
                plan.wanted(),
                selection,
                moves,
                plan.setup(),
                sequenceSetup,
                proof,
                plan.steps(),
                plan.tools(),
                plan.parts(),
                plan.advice(),
                plan.warnings());
    }

    static Step height(Step step, Height height) {
        return copy(step, step.number(), height, step.fastener(), step.minutes(), false);
    }

    static Step fastener(Step step, Fastener fastener) {
        return copy(step, step.number(), step.height(), fastener, step.minutes(), false);
    }

    static Step minutes(Step step, Minutes minutes) {
        return copy(step, step.number(), step.height(), step.fastener(), minutes, false);
    }

    static Step alone(Step step) {
        return copy(step, step.number(), step.height(), step.fastener(), step.minutes(), true);
    }

    private static Step copy(
            Step step, int number, Height height, @Nullable Fastener fastener, Minutes minutes, boolean alone) {
        return new Step(
                number,
                step.phase(),
                step.act(),
                step.joint(),
                step.part(),
                alone ? List.of() : step.with(),
                step.aid(),
                step.followUp(),
                fastener,
                step.side(),
                step.station(),
                height,
                step.tool(),
                step.hold(),
                minutes,
                step.setup(),
                step.stages(),
                step.why(),
                step.cautions(),
                step.text());
    }
}

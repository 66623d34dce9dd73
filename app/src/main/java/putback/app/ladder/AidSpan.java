package putback.app.ladder;

import org.jspecify.annotations.Nullable;
import putback.plan.steps.Step;
import putback.sheet.Part;

/** An aid from the step that puts it on to the step that takes it off. */
final class AidSpan {
    private final String aid;
    private final @Nullable Part part;
    private final int on;
    private int off = Integer.MAX_VALUE;

    AidSpan(String aid, @Nullable Part part, int on) {
        this.aid = aid;
        this.part = part;
        this.on = on;
    }

    /** Whether it is on and the step speaks of it. */
    boolean isOpenFor(Step step) {
        return off == Integer.MAX_VALUE && aid.equals(step.aid()) && index(part) == index(step.part());
    }

    private static int index(@Nullable Part part) {
        return part == null ? -1 : part.index();
    }

    /** Whether this step takes it off; the first that does, ends it. */
    boolean endsWith(Step step) {
        if (isOpenFor(step)) {
            off = step.number();
            return true;
        }
        return false;
    }

    int on() {
        return on;
    }

    /** Number of the step, or a number above all where it stays on. */
    int off() {
        return off;
    }
}

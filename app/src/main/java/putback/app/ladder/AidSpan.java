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

    /** Whether this step takes it off; the first that does, ends it. */
    boolean endsWith(Step step) {
        if (off == Integer.MAX_VALUE && aid.equals(step.aid()) && part == step.part()) {
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

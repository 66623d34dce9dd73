package putback.angles.linkage;

import org.jspecify.annotations.Nullable;

/** Goes from one closed state to another goal in small steps, so that the linkage stays assembled the same way. */
final class Following {
    private static final double STEP_MM = 10;
    private static final double STEP_RAD = 0.05;
    private static final double SMALLEST = 1e-7;

    private final Closing closing;

    Following(Closing closing) {
        this.closing = closing;
    }

    /**
     * How far it came.
     *
     * @param state the last closed one
     * @param goal that it meets
     * @param arrived whether that is the goal asked for
     */
    record Reached(State state, Goal goal, boolean arrived) {}

    /**
     * @param start closed for its goal
     */
    Reached from(State start, Goal from, Goal to) {
        double whole = Math.max(
                (Math.abs(to.travelMm() - from.travelMm()) + Math.abs(to.rackMm() - from.rackMm())) / STEP_MM,
                (gap(from.camberRad(), to.camberRad()) + gap(from.toeRad(), to.toeRad())) / STEP_RAD);
        double most = 1 / Math.max(1, Math.ceil(whole));
        double step = most;
        double done = 0;
        State state = start;
        int sign = closing.sign(start, from);
        while (done < 1) {
            double next = done + step > 1 - 1e-9 ? 1 : done + step;
            State tried = closing.near(state, from.toward(to, next), sign);
            if (tried != null) {
                state = tried;
                done = next;
                step = Math.min(most, 2 * step);
            } else {
                step /= 2;
                if (step < SMALLEST) {
                    return new Reached(state, from.toward(to, done), false);
                }
            }
        }
        return new Reached(state, to, true);
    }

    private static double gap(@Nullable Double from, @Nullable Double to) {
        return from == null || to == null ? 0 : Math.abs(to - from);
    }
}

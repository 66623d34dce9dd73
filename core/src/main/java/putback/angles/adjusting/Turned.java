package putback.angles.adjusting;

import java.util.List;
import org.jspecify.annotations.Nullable;
import putback.angles.readings.CarAngles;

/**
 * What to turn and what comes of it.
 *
 * @param steps rear adjusters first, each group in the order of the file; those that stay put too
 * @param outcomes of everything wanted
 * @param wheelsOffDeg by which the road wheels stay off the thrust line, as {@code Figure.steering}; null where unknown
 * @param aboutTheMiddle whether the rear axle was not read, so that the middle of the car stands for the thrust line
 * @param allTried whether every way to round what has whole marks was tried or ruled out; else there may be a better one
 * @param stops limits that, were they wider, would bring what stays outside closer
 */
public record Turned(
        List<Step> steps,
        CarAngles after,
        List<Outcome> outcomes,
        @Nullable Double wheelsOffDeg,
        boolean aboutTheMiddle,
        boolean allTried,
        List<Step> stops) {
    private static final double STRAIGHT_DEG = 1e-3;

    public Turned {
        steps = List.copyOf(steps);
        outcomes = List.copyOf(outcomes);
        stops = List.copyOf(stops);
    }

    /**
     * @param by in the adjuster's unit
     */
    public record Step(Adjuster adjuster, double by) {}

    /** Whether everything wanted ends up inside; null where something was not read and nothing is outside. */
    public @Nullable Boolean inside() {
        boolean unread = false;
        for (Outcome outcome : outcomes) {
            if (outcome.missDeg() > 0) {
                return false;
            }
            unread |= !outcome.isRead();
        }
        return unread ? null : Boolean.TRUE;
    }

    /** Whether the steering wheel ends up straight; null where that is not known. */
    public @Nullable Boolean straight() {
        return wheelsOffDeg == null ? null : Math.abs(wheelsOffDeg) < STRAIGHT_DEG;
    }
}

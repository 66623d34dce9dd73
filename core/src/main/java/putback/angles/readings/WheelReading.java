package putback.angles.readings;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What was read of one wheel; null for what was not.
 *
 * @param sweep readings with the wheel steered, for caster and inclination; empty, or two and more
 */
public record WheelReading(
        @Nullable Double camberDeg,
        @Nullable Double toeDeg,
        @Nullable Double casterDeg,
        @Nullable Double saiDeg,
        List<SteerReading> sweep) {
    public static final WheelReading NONE = new WheelReading(null, null, null, null, List.of());

    public WheelReading {
        sweep = List.copyOf(sweep);
    }

    /** The steering axis that the sweep gives; null without one. */
    public @Nullable SteerSweep steerSweep() {
        return sweep.isEmpty() || camberDeg == null || toeDeg == null
                ? null
                : SteerSweep.of(new SteerReading(toeDeg, camberDeg), sweep);
    }
}

package putback.angles.adjusting;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import putback.angles.readings.WheelAngle;

/**
 * Something that can be turned or shifted.
 *
 * @param id as its file names it
 * @param effects degrees of each wheel angle for one unit of it
 * @param per the unit: turn, mm, mark and the like
 * @param low how far it goes the one way, at most 0; minus infinity where that is not given
 * @param high the other way, at least 0
 * @param whole whether it stands only on whole units
 * @param ways what a person calls the two ways, negative first, such as shorter and longer; empty where not given
 */
public record Adjuster(
        String id,
        Map<WheelAngle, Double> effects,
        String per,
        double low,
        double high,
        boolean whole,
        List<String> ways) {
    public Adjuster {
        effects = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(effects));
        ways = List.copyOf(ways);
    }

    /** Whether it moves rear wheels only, so that it is set first. */
    public boolean isRear() {
        return effects.keySet().stream().noneMatch(angle -> angle.place().isFront());
    }
}

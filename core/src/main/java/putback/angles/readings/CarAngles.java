package putback.angles.readings;

import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Where the wheels of one car point; what is not known is not there.
 *
 * @param degrees by wheel and measure
 */
public record CarAngles(Map<WheelAngle, Double> degrees) {
    public CarAngles {
        degrees = Map.copyOf(degrees);
    }

    public @Nullable Double of(Place place, Measure measure) {
        return degrees.get(new WheelAngle(place, measure));
    }

    /** The same after something was turned; what was not known stays so. */
    public CarAngles changed(Map<WheelAngle, Double> by) {
        Map<WheelAngle, Double> after = new HashMap<>(degrees);
        by.forEach((angle, change) -> after.computeIfPresent(angle, (same, was) -> was + change));
        return new CarAngles(after);
    }
}

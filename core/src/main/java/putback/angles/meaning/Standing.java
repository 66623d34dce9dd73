package putback.angles.meaning;

import java.util.List;
import org.jspecify.annotations.Nullable;
import putback.angles.adjusting.Wanted;
import putback.angles.readings.CarAngles;

/** How a figure stands against the range that is wanted of it. */
enum Standing {
    BELOW,
    WITHIN,
    ABOVE;

    /** Null where no range is wanted of it, or it was not read. */
    static @Nullable Standing of(String figure, CarAngles angles, List<Wanted> wanted) {
        for (Wanted one : wanted) {
            Double value = one.figure().name().equals(figure) ? one.figure().of(angles) : null;
            if (value != null) {
                return one.missDeg(value) == 0 ? WITHIN : value < one.lowDeg() ? BELOW : ABOVE;
            }
        }
        return null;
    }

    boolean isOff() {
        return this != WITHIN;
    }
}

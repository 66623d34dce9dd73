package putback.sheet;

import org.jspecify.annotations.Nullable;
import putback.quantity.Length;
import putback.quantity.Torque;

/**
 * The fastener of a joint and how tight it goes.
 *
 * @param count how many of them, at least 1
 * @param thread designation as written, such as M12x1.25 or 1/2-20; null when not known
 * @param propertyClass such as 10.9, A2-70 or SAE 5; null when not known
 * @param hex across flats of the turned side; null when not known
 * @param source where the torque came from; null when nobody said, and then shown so
 * @param windowLow lowest reading allowed; null for the default of 10 % under
 * @param windowHigh highest reading allowed; null for the default of 10 % over
 */
public record Fastener(
        int count,
        @Nullable String thread,
        @Nullable String propertyClass,
        @Nullable Length hex,
        Holding hold,
        Tightening tightening,
        @Nullable String source,
        Condition condition,
        boolean critical,
        Height tighten,
        boolean singleUse,
        boolean leftHanded,
        @Nullable Torque windowLow,
        @Nullable Torque windowHigh) {}

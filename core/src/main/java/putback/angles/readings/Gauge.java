package putback.angles.readings;

import org.jspecify.annotations.Nullable;

/**
 * How finely a gauge reads, each a standard deviation in degrees; null where it is not given.
 *
 * @param steerDeg of the plate on which a wheel is steered
 * @param casterDeg of a caster that is read off, not worked out
 * @param saiDeg of an inclination that is read off
 */
public record Gauge(
        double camberDeg,
        double toeDeg,
        double steerDeg,
        @Nullable Double casterDeg,
        @Nullable Double saiDeg) {}

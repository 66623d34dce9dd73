package putback.angles.readings;

import java.util.EnumMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What was read of one car.
 *
 * @param wheels those that were read
 * @param steeringRatio turn of the steering wheel to turn of the road wheels; null where it is not given
 * @param setBack null where no wheelbases are given
 * @param gauge how finely it reads; null where it is not given
 * @param toeReadAtMm diameter at which a toe in mm is meant; null where it is not given
 */
public record CarReading(
        Map<Place, WheelReading> wheels,
        @Nullable Double steeringRatio,
        @Nullable SetBack setBack,
        @Nullable Gauge gauge,
        @Nullable Double toeReadAtMm) {
    public CarReading {
        EnumMap<Place, WheelReading> copy = new EnumMap<>(Place.class);
        copy.putAll(wheels);
        wheels = java.util.Collections.unmodifiableMap(copy);
    }

    public WheelReading of(Place place) {
        return wheels.getOrDefault(place, WheelReading.NONE);
    }

    /** What follows for each wheel: a caster or inclination as given, or from the sweep. */
    public CarAngles angles() {
        Map<WheelAngle, Double> degrees = new java.util.HashMap<>();
        wheels.forEach((place, wheel) -> {
            put(degrees, place, Measure.CAMBER, wheel.camberDeg());
            put(degrees, place, Measure.TOE, wheel.toeDeg());
            SteerSweep sweep = wheel.steerSweep();
            put(degrees, place, Measure.CASTER, wheel.casterDeg());
            put(degrees, place, Measure.SAI, wheel.saiDeg());
            if (sweep != null && wheel.casterDeg() == null && sweep.knowsCaster()) {
                put(degrees, place, Measure.CASTER, sweep.casterDeg());
            }
            if (sweep != null && wheel.saiDeg() == null && sweep.knowsSai()) {
                put(degrees, place, Measure.SAI, sweep.saiDeg());
            }
        });
        return new CarAngles(degrees);
    }

    private static void put(Map<WheelAngle, Double> degrees, Place place, Measure measure, @Nullable Double value) {
        if (value != null) {
            degrees.put(new WheelAngle(place, measure), value);
        }
    }
}

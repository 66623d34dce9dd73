package putback.angles.readings;

import java.util.EnumMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * How sure a figure is, from how finely the gauge reads, to first order; errors of readings are taken as independent.
 * What comes of a sweep shares the straight-ahead reading's error with the camber itself, which is counted.
 *
 * @param spreads covariance in square degrees of the measures of each wheel; NaN where nothing is known of one
 */
public record Uncertainty(Map<Place, double[][]> spreads) {
    private static final int MEASURES = Measure.values().length;
    private static final double STEP_DEG = 1e-4;

    /** Null where no gauge is given. */
    public static @Nullable Uncertainty of(CarReading reading) {
        Gauge gauge = reading.gauge();
        if (gauge == null) {
            return null;
        }
        EnumMap<Place, double[][]> spreads = new EnumMap<>(Place.class);
        reading.wheels().forEach((place, wheel) -> spreads.put(place, covariance(wheel, gauge)));
        return new Uncertainty(spreads);
    }

    /** Standard deviation in degrees; null where it is not known. */
    public @Nullable Double of(Figure figure) {
        double variance = 0;
        for (Map.Entry<WheelAngle, Double> one : figure.shares().entrySet()) {
            for (Map.Entry<WheelAngle, Double> other : figure.shares().entrySet()) {
                double[][] spread = spreads.get(one.getKey().place());
                if (spread == null) {
                    return null;
                }
                if (one.getKey().place() == other.getKey().place()) {
                    variance += one.getValue()
                            * other.getValue()
                            * spread[one.getKey().measure().ordinal()][
                                    other.getKey().measure().ordinal()];
                }
            }
        }
        return Double.isNaN(variance) ? null : Math.sqrt(variance);
    }

    private static double[][] covariance(WheelReading wheel, Gauge gauge) {
        double[][] spread = new double[MEASURES][MEASURES];
        int reads = 2 + 2 * wheel.sweep().size();
        for (int read = 0; read < reads; read++) {
            double deviation = read == 0 ? gauge.camberDeg() : read == 1 ? gauge.toeDeg() : gauge.steerDeg();
            if (read > 1 && read % 2 == 0) {
                deviation = gauge.camberDeg();
            }
            double[] slope = slope(wheel, read);
            for (int i = 0; i < MEASURES; i++) {
                for (int j = 0; j < MEASURES; j++) {
                    spread[i][j] += deviation * deviation * slope[i] * slope[j];
                }
            }
        }
        readOff(spread, Measure.CASTER, wheel.casterDeg(), gauge.casterDeg());
        readOff(spread, Measure.SAI, wheel.saiDeg(), gauge.saiDeg());
        return spread;
    }

    /** An angle that was read off has the deviation of that reading, and none with the others in common. */
    private static void readOff(
            double[][] spread, Measure measure, @Nullable Double value, @Nullable Double deviation) {
        if (value == null) {
            return;
        }
        int at = measure.ordinal();
        for (int i = 0; i < MEASURES; i++) {
            spread[i][at] = 0;
            spread[at][i] = 0;
        }
        spread[at][at] = deviation == null ? Double.NaN : deviation * deviation;
    }

    /** Change of every measure by one reading, by central differences. */
    private static double[] slope(WheelReading wheel, int read) {
        double[] up = measures(shifted(wheel, read, STEP_DEG));
        double[] down = measures(shifted(wheel, read, -STEP_DEG));
        double[] slope = new double[MEASURES];
        for (int i = 0; i < MEASURES; i++) {
            slope[i] = (up[i] - down[i]) / (2 * STEP_DEG);
        }
        return slope;
    }

    private static double[] measures(WheelReading wheel) {
        SteerSweep sweep = wheel.steerSweep();
        return new double[] {
            wheel.camberDeg() == null ? Double.NaN : wheel.camberDeg(),
            wheel.toeDeg() == null ? Double.NaN : wheel.toeDeg(),
            sweep == null ? Double.NaN : sweep.casterDeg(),
            sweep == null ? Double.NaN : sweep.saiDeg()
        };
    }

    private static WheelReading shifted(WheelReading wheel, int read, double by) {
        java.util.List<SteerReading> sweep = new java.util.ArrayList<>(wheel.sweep());
        int at = read / 2 - 1;
        if (at >= 0) {
            SteerReading one = sweep.get(at);
            sweep.set(
                    at,
                    read % 2 == 0
                            ? new SteerReading(one.toeDeg(), one.camberDeg() + by)
                            : new SteerReading(one.toeDeg() + by, one.camberDeg()));
        }
        return new WheelReading(
                plus(wheel.camberDeg(), read == 0 ? by : 0),
                plus(wheel.toeDeg(), read == 1 ? by : 0),
                wheel.casterDeg(),
                wheel.saiDeg(),
                sweep);
    }

    private static @Nullable Double plus(@Nullable Double value, double by) {
        return value == null ? null : Double.valueOf(value + by);
    }
}

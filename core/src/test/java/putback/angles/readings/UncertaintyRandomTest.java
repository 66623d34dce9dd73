package putback.angles.readings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import org.junit.jupiter.api.Test;

class UncertaintyRandomTest {
    private static final Gauge GAUGE = new Gauge(0.03, 0.02, 0.1, 0.2, null);
    private static final int DRAWS = 20_000;

    private static CarReading reading(Random noise, double size) {
        return new CarReading(
                Map.of(
                        Place.FRONT_LEFT, wheel(noise, size, -0.5, 0.1, 1.25665, -0.78427),
                        Place.FRONT_RIGHT, wheel(noise, size, -0.25, 0.05, 2.50149, -1.47033),
                        Place.REAR_LEFT, wheel(noise, size, -1, 0.12, Double.NaN, 0),
                        Place.REAR_RIGHT, wheel(noise, size, -1.1, 0.02, Double.NaN, 0)),
                16.0,
                null,
                GAUGE,
                null);
    }

    private static WheelReading wheel(Random noise, double size, double camber, double toe, double left, double right) {
        double read = camber + size * GAUGE.camberDeg() * noise.nextGaussian();
        double toed = toe + size * GAUGE.toeDeg() * noise.nextGaussian();
        List<SteerReading> sweep = Double.isNaN(left)
                ? List.of()
                : List.of(steered(noise, size, toe - 20, left), steered(noise, size, toe + 20, right));
        return new WheelReading(read, toed, null, null, sweep);
    }

    private static SteerReading steered(Random noise, double size, double toe, double camber) {
        return new SteerReading(
                toe + size * GAUGE.steerDeg() * noise.nextGaussian(),
                camber + size * GAUGE.camberDeg() * noise.nextGaussian());
    }

    @Test
    void everyFigure_spreadsAsManyNoisyReadingsDo() {
        int seed = 5;
        Random random = new Random(seed);
        Uncertainty uncertainty = Objects.requireNonNull(Uncertainty.of(reading(random, 0)));
        List<Figure> figures = List.of(
                Figure.wheel(Place.FRONT_LEFT, Measure.CAMBER),
                Figure.wheel(Place.FRONT_LEFT, Measure.CASTER),
                Figure.wheel(Place.FRONT_RIGHT, Measure.SAI),
                Figure.included(Place.FRONT_LEFT),
                Figure.totalToe(true),
                Figure.cross(true, Measure.CASTER),
                Figure.thrust(),
                Figure.steering());
        double[] sums = new double[figures.size()];
        double[] squares = new double[figures.size()];
        for (int draw = 0; draw < DRAWS; draw++) {
            CarAngles angles = reading(random, 1).angles();
            for (int i = 0; i < figures.size(); i++) {
                double value = Objects.requireNonNull(figures.get(i).of(angles));
                sums[i] += value;
                squares[i] += value * value;
            }
        }
        for (int i = 0; i < figures.size(); i++) {
            double mean = sums[i] / DRAWS;
            double spread = Math.sqrt(squares[i] / DRAWS - mean * mean);
            Double said = uncertainty.of(figures.get(i));
            assertThat(said).as("seed " + seed + ", " + figures.get(i).name()).isNotNull();
            assertThat(said / spread)
                    .as("seed " + seed + ", " + figures.get(i).name())
                    .isCloseTo(1, within(0.03));
        }
    }

    @Test
    void anAngleReadOff_withoutItsOwnDeviation_isNotCalledSure() {
        WheelReading wheel = new WheelReading(-0.5, 0.1, 3.0, 12.0, List.of());
        CarReading car = new CarReading(Map.of(Place.FRONT_LEFT, wheel), null, null, GAUGE, null);
        Uncertainty uncertainty = Objects.requireNonNull(Uncertainty.of(car));
        assertThat(uncertainty.of(Figure.wheel(Place.FRONT_LEFT, Measure.CASTER)))
                .isEqualTo(0.2);
        assertThat(uncertainty.of(Figure.wheel(Place.FRONT_LEFT, Measure.SAI))).isNull();
        assertThat(uncertainty.of(Figure.thrust())).isNull();
    }
}

package putback.angles.adjusting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import putback.angles.readings.CarAngles;
import putback.angles.readings.Figure;
import putback.angles.readings.Measure;
import putback.angles.readings.Place;
import putback.angles.readings.WheelAngle;

/** Against trying every whole mark, and against walking downhill from many places. */
class AdjustingRandomTest {
    private static CarAngles car(Random random) {
        Map<WheelAngle, Double> degrees = new HashMap<>();
        for (Place place : Place.values()) {
            degrees.put(new WheelAngle(place, Measure.CAMBER), random.nextGaussian());
            degrees.put(new WheelAngle(place, Measure.TOE), 0.3 * random.nextGaussian());
        }
        return new CarAngles(degrees);
    }

    private static List<Adjuster> adjusters(Random random, boolean whole, boolean front) {
        List<Adjuster> adjusters = new ArrayList<>();
        for (Place place : Place.values()) {
            if (place.isFront() == front) {
                double range = 1 + random.nextInt(4);
                adjusters.add(new Adjuster(
                        place.word().replace('.', '-'),
                        Map.of(
                                new WheelAngle(place, Measure.TOE),
                                0.1 + 0.3 * random.nextDouble(),
                                new WheelAngle(place, Measure.CAMBER),
                                0.4 * random.nextGaussian()),
                        "mark",
                        -range,
                        range,
                        whole,
                        List.of()));
            }
        }
        return adjusters;
    }

    private static List<Wanted> rear(Random random) {
        return List.of(
                new Wanted(Figure.totalToe(false), -0.1, 0.1 + random.nextDouble()),
                new Wanted(Figure.thrust(), -0.2, 0.2),
                new Wanted(Figure.wheel(Place.REAR_LEFT, Measure.CAMBER), -1.5, 0));
    }

    private static double missed(CarAngles after, List<Wanted> wanted) {
        double missed = 0;
        for (Wanted one : wanted) {
            missed += one.missDeg(value(one, after));
        }
        return missed;
    }

    private static double spread(CarAngles after, List<Wanted> wanted) {
        double spread = 0;
        for (Wanted one : wanted) {
            double share = (value(one, after) - one.middleDeg()) / one.halfWidthDeg();
            spread += share * share;
        }
        return spread;
    }

    private static double value(Wanted wanted, CarAngles angles) {
        Double value = wanted.figure().of(angles);
        return value == null ? Double.NaN : value;
    }

    private static CarAngles after(CarAngles before, List<Adjuster> adjusters, double[] by) {
        Map<WheelAngle, Double> changes = new HashMap<>();
        for (int i = 0; i < by.length; i++) {
            double step = by[i];
            adjusters.get(i).effects().forEach((angle, effect) -> changes.merge(angle, step * effect, Double::sum));
        }
        return before.changed(changes);
    }

    @Test
    void wholeMarks_areTheBestOfAllThatCanBeSet() {
        for (int seed = 0; seed < 60; seed++) {
            Random random = new Random(seed);
            CarAngles car = car(random);
            List<Adjuster> cams = adjusters(random, true, false);
            List<Wanted> wanted = rear(random);
            double missed = Double.POSITIVE_INFINITY;
            double spread = Double.POSITIVE_INFINITY;
            for (double one = cams.get(0).low(); one <= cams.get(0).high(); one++) {
                for (double other = cams.get(1).low(); other <= cams.get(1).high(); other++) {
                    CarAngles set = after(car, cams, new double[] {one, other});
                    double miss = missed(set, wanted);
                    double off = spread(set, wanted);
                    if (miss < missed - 1e-7 || (miss < missed + 1e-7 && off < spread)) {
                        missed = Math.min(miss, missed);
                        spread = off;
                    }
                }
            }
            Turned turned = Adjusting.of(car, cams, wanted);
            assertThat(missed(turned.after(), wanted)).as("seed " + seed).isCloseTo(missed, within(1e-6));
            if (missed == 0) {
                assertThat(spread(turned.after(), wanted)).as("seed " + seed).isCloseTo(spread, within(1e-4));
            }
        }
    }

    @Test
    void rangesThatCanBeMet_areCentred_noStepAnyWayIsBetter() {
        int met = 0;
        for (int seed = 0; seed < 120; seed++) {
            Random random = new Random(seed);
            CarAngles car = car(random);
            List<Adjuster> links = adjusters(random, false, false);
            List<Wanted> wanted = rear(random);
            Turned turned = Adjusting.of(car, links, wanted);
            double[] by = turned.steps().stream().mapToDouble(Turned.Step::by).toArray();
            double miss = missed(turned.after(), wanted);
            double spread = spread(turned.after(), wanted);
            met += miss == 0 ? 1 : 0;
            for (int i = 0; i < 400; i++) {
                double size = Math.pow(10, -1 - 4 * random.nextDouble());
                double[] other = by.clone();
                for (int j = 0; j < other.length; j++) {
                    double moved = other[j] + size * random.nextGaussian();
                    other[j] =
                            Math.max(links.get(j).low(), Math.min(links.get(j).high(), moved));
                }
                CarAngles near = after(car, links, other);
                double more = missed(near, wanted);
                assertThat(more).as("seed " + seed).isGreaterThan(miss - 3e-4);
                if (miss == 0 && more == 0) {
                    assertThat(spread(near, wanted)).as("seed " + seed).isGreaterThan(spread - 5e-3 * (1 + spread));
                }
            }
        }
        assertThat(met).isGreaterThan(20);
    }

    @Test
    void theSteeringWheel_isStraightWheneverTheRodsReach() {
        for (int seed = 0; seed < 100; seed++) {
            Random random = new Random(seed);
            CarAngles car = car(random);
            List<Adjuster> all = new ArrayList<>(adjusters(random, false, true));
            all.addAll(adjusters(random, false, false));
            all.replaceAll(one -> new Adjuster(one.id(), one.effects(), one.per(), -50, 50, false, List.of()));
            List<Wanted> wanted = new ArrayList<>(rear(random).subList(0, 2));
            wanted.add(new Wanted(Figure.totalToe(true), 0, 0.2));
            Turned turned = Adjusting.of(car, all, wanted);
            assertThat(turned.inside()).as("seed " + seed).isTrue();
            assertThat(turned.straight()).as("seed " + seed).isTrue();
            for (Outcome outcome : turned.outcomes()) {
                Double after = outcome.afterDeg();
                assertThat(after == null ? Double.NaN : after)
                        .as("seed " + seed)
                        .isCloseTo(outcome.wanted().middleDeg(), within(1e-4));
            }
        }
    }
}

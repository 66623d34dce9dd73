package putback.angles.adjusting;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import putback.angles.readings.CarAngles;
import putback.angles.readings.Figure;
import putback.angles.readings.WheelAngle;

/**
 * Solves all adjusters together. First as little as possible stays outside its range (degrees added up), then the road
 * wheels come to the thrust line; with that kept, everything wanted is brought to the middle of its range: least sum of
 * squared distances, each as a share of half its range, the rear axle far ahead of the front. Where that leaves a choice,
 * as little as possible is turned.
 */
public final class Adjusting {
    private static final double STEERING_WEIGHT = 0.05;
    private static final double REAR_FIRST = 100;
    private static final double LITTLE = 1e-5;
    private static final double SLACK = 1e-7;
    private static final double FINEST = 1e9;
    private static final double HELPS_DEG = 1e-5;

    private final CarAngles before;
    private final List<Adjuster> adjusters;
    private final List<Wanted> wanted;
    private final List<Aim> aims = new ArrayList<>();
    private final Figure steering;
    private final boolean aboutTheMiddle;
    private boolean allTried = true;

    /** Something wanted that is read, and what each adjuster does to it. */
    private record Aim(Wanted wanted, double value, double[] effects, double weight) {}

    private Adjusting(CarAngles before, List<Adjuster> adjusters, List<Wanted> wanted) {
        this.before = before;
        this.adjusters = adjusters;
        this.wanted = wanted;
        aboutTheMiddle = Figure.steering().of(before) == null;
        steering = aboutTheMiddle ? Figure.frontSplit() : Figure.steering();
        for (Wanted one : wanted) {
            aim(one, 1);
        }
        if (adjusters.stream().anyMatch(one -> effect(one, Figure.frontSplit()) != 0)) {
            aim(new Wanted(steering, 0, 0), STEERING_WEIGHT);
        }
    }

    /**
     * @param adjusters none of them with an empty effect
     * @param wanted what was not read is left alone
     */
    public static Turned of(CarAngles before, List<Adjuster> adjusters, List<Wanted> wanted) {
        return new Adjusting(before, List.copyOf(adjusters), List.copyOf(wanted)).turned();
    }

    private void aim(Wanted one, double weight) {
        Double value = one.figure().of(before);
        if (value != null) {
            double[] effects = adjusters.stream()
                    .mapToDouble(adjuster -> effect(adjuster, one.figure()))
                    .toArray();
            aims.add(new Aim(one, value, effects, weight));
        }
    }

    private static double effect(Adjuster adjuster, Figure figure) {
        return figure.changeBy(adjuster.effects());
    }

    private Turned turned() {
        double[] misses = misses(-1);
        double[] by = centred(misses);
        List<Turned.Step> steps = new ArrayList<>();
        Map<WheelAngle, Double> changes = new HashMap<>();
        for (boolean rear : new boolean[] {true, false}) {
            for (int i = 0; i < adjusters.size(); i++) {
                if (adjusters.get(i).isRear() == rear) {
                    steps.add(new Turned.Step(adjusters.get(i), by[i]));
                }
            }
        }
        for (Turned.Step step : steps) {
            step.adjuster().effects().forEach((angle, effect) -> changes.merge(angle, step.by() * effect, Double::sum));
        }
        CarAngles after = before.changed(changes);
        List<Outcome> outcomes = wanted.stream()
                .map(one ->
                        new Outcome(one, one.figure().of(before), one.figure().of(after)))
                .toList();
        return new Turned(steps, after, outcomes, steering.of(after), aboutTheMiddle, allTried, stops(misses, by));
    }

    /** How far each aim stays outside at least, all together. */
    private double[] misses(int freed) {
        int count = adjusters.size();
        Programme programme = new Programme(count + aims.size());
        bounds(programme, freed);
        for (int i = 0; i < aims.size(); i++) {
            Aim aim = aims.get(i);
            programme.bound(count + i, 0, Double.POSITIVE_INFINITY, false);
            programme.least(count + i, aim.weight);
            double[] above = java.util.Arrays.copyOf(aim.effects, count + aims.size());
            double[] below = above.clone();
            above[count + i] = -1;
            below[count + i] = 1;
            programme.row(above, Double.NEGATIVE_INFINITY, aim.wanted.highDeg() - aim.value);
            programme.row(below, aim.wanted.lowDeg() - aim.value, Double.POSITIVE_INFINITY);
        }
        double[] best = best(programme);
        double[] misses = new double[aims.size()];
        for (int i = 0; best != null && i < misses.length; i++) {
            misses[i] = best[count + i];
        }
        return misses;
    }

    private double @Nullable [] best(Programme programme) {
        double[] best = programme.best();
        allTried &= programme.triedAll();
        return best;
    }

    private double[] centred(double[] misses) {
        int count = adjusters.size();
        double slack = SLACK;
        double[] best = null;
        for (int round = 0; best == null && round < 4; round++) {
            Programme programme = new Programme(count);
            bounds(programme, -1);
            for (int i = 0; i < aims.size(); i++) {
                Aim aim = aims.get(i);
                programme.row(
                        aim.effects,
                        aim.wanted.lowDeg() - aim.value - misses[i] - slack,
                        aim.wanted.highDeg() - aim.value + misses[i] + slack);
                if (!aim.wanted.figure().name().equals(steering.name())) {
                    double rear = aim.wanted.figure().isRear() ? REAR_FIRST : 1;
                    double half = aim.wanted.halfWidthDeg();
                    programme.leastSquare(aim.effects, aim.value - aim.wanted.middleDeg(), rear / (half * half));
                }
            }
            for (int i = 0; i < count; i++) {
                double[] alone = new double[count];
                alone[i] = 1;
                programme.leastSquare(alone, 0, LITTLE * heft(adjusters.get(i)));
            }
            best = best(programme);
            slack *= 100;
        }
        double[] by = new double[count];
        for (int i = 0; best != null && i < count; i++) {
            by[i] = Math.rint(best[i] * FINEST) / FINEST + 0.0;
        }
        return by;
    }

    /** The square of its largest effect, so that a turn here and a millimetre there compare. */
    private static double heft(Adjuster adjuster) {
        double most = adjuster.effects().values().stream()
                .mapToDouble(Math::abs)
                .max()
                .orElse(1);
        return most * most;
    }

    private void bounds(Programme programme, int freed) {
        for (int i = 0; i < adjusters.size(); i++) {
            Adjuster one = adjusters.get(i);
            boolean free = i == freed;
            programme.bound(
                    i,
                    free ? Double.NEGATIVE_INFINITY : one.low(),
                    free ? Double.POSITIVE_INFINITY : one.high(),
                    one.whole());
        }
    }

    /** Adjusters at an end beyond which less would stay outside. */
    private List<Turned.Step> stops(double[] misses, double[] by) {
        List<Turned.Step> stops = new ArrayList<>();
        double missed = weighed(misses);
        for (int i = 0; missed > HELPS_DEG && i < by.length; i++) {
            Adjuster one = adjusters.get(i);
            boolean atEnd = by[i] < one.low() + 1e-6 || by[i] > one.high() - 1e-6;
            if (atEnd && weighed(misses(i)) < missed - HELPS_DEG) {
                stops.add(new Turned.Step(one, by[i]));
            }
        }
        return stops;
    }

    private double weighed(double[] misses) {
        double sum = 0;
        for (int i = 0; i < misses.length; i++) {
            sum += aims.get(i).weight * misses[i];
        }
        return sum;
    }
}

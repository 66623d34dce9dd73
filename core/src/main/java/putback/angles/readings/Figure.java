package putback.angles.readings;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * An angle that is read or follows from what is read. All of them are sums of wheel angles with factors, which is what
 * makes uncertainty and adjustment linear.
 *
 * @param name as a file names it, such as {@code front.total-toe}
 * @param said as a person says it
 * @param shares factor of each wheel angle in it
 */
public record Figure(String name, String said, Map<WheelAngle, Double> shares) {
    public Figure {
        shares = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(shares));
    }

    /** Its value in degrees; null where something it needs is not known. */
    public @Nullable Double of(CarAngles angles) {
        double sum = 0;
        for (Map.Entry<WheelAngle, Double> share : shares.entrySet()) {
            Double value = angles.degrees().get(share.getKey());
            if (value == null) {
                return null;
            }
            sum += share.getValue() * value;
        }
        return sum;
    }

    /** How much a change of some wheel angles changes it. */
    public double changeBy(Map<WheelAngle, Double> by) {
        double sum = 0;
        for (Map.Entry<WheelAngle, Double> share : shares.entrySet()) {
            sum += share.getValue() * by.getOrDefault(share.getKey(), 0.0);
        }
        return sum;
    }

    /** Whether it is of the rear axle alone. */
    public boolean isRear() {
        return shares.keySet().stream().noneMatch(angle -> angle.place().isFront());
    }

    public static Figure wheel(Place place, Measure measure) {
        WheelAngle angle = new WheelAngle(place, measure);
        return new Figure(angle.word(), place.said() + " " + measure.said(), Map.of(angle, 1.0));
    }

    /** Camber and inclination together. Source: ⟨ISO8855⟩ for the signs. */
    public static Figure included(Place place) {
        return of(
                place.word() + ".included",
                place.said() + " included angle",
                new WheelAngle(place, Measure.CAMBER),
                1,
                new WheelAngle(place, Measure.SAI),
                1);
    }

    /** Both toes of one axle together. Source: ⟨ISO8855⟩ 7.1.7. */
    public static Figure totalToe(boolean front) {
        return pair(front, ".total-toe", " total toe", Measure.TOE, 1, 1);
    }

    /** Left minus right. */
    public static Figure cross(boolean front, Measure measure) {
        return pair(front, ".cross-" + measure.word(), " cross " + measure.said(), measure, 1, -1);
    }

    /** Half the difference of the rear toes; positive points right of the middle of the car. */
    public static Figure thrust() {
        return pair(false, ".thrust", " thrust angle", Measure.TOE, 0.5, -0.5);
    }

    /**
     * How far the road wheels stand to the right of the thrust line with the steering wheel straight, so how far they, and
     * with the ratio the steering wheel, are turned left to go straight on.
     */
    public static Figure steering() {
        Map<WheelAngle, Double> shares = new LinkedHashMap<>(halfOf(Place.FRONT_LEFT, 0.5));
        shares.putAll(halfOf(Place.FRONT_RIGHT, -0.5));
        shares.putAll(halfOf(Place.REAR_LEFT, -0.5));
        shares.putAll(halfOf(Place.REAR_RIGHT, 0.5));
        return new Figure("steering", "straight steering wheel", shares);
    }

    /** The same about the middle of the car, for where the rear axle was not read. */
    public static Figure frontSplit() {
        return pair(true, ".split-toe", " toe split", Measure.TOE, 0.5, -0.5);
    }

    /** Every figure that a wanted range may be about, in the order of reports. */
    public static List<Figure> ofAxle(boolean front) {
        List<Figure> figures = new java.util.ArrayList<>();
        for (boolean left : new boolean[] {true, false}) {
            for (Measure measure : Measure.values()) {
                figures.add(wheel(Place.of(front, left), measure));
            }
            figures.add(included(Place.of(front, left)));
        }
        figures.add(totalToe(front));
        for (Measure measure : new Measure[] {Measure.CAMBER, Measure.CASTER, Measure.SAI}) {
            figures.add(cross(front, measure));
        }
        if (!front) {
            figures.add(thrust());
        }
        return figures;
    }

    private static Map<WheelAngle, Double> halfOf(Place place, double share) {
        return Map.of(new WheelAngle(place, Measure.TOE), share);
    }

    private static Figure pair(boolean front, String name, String said, Measure measure, double left, double right) {
        String axle = front ? "front" : "rear";
        return of(
                axle + name,
                axle + said,
                new WheelAngle(Place.of(front, true), measure),
                left,
                new WheelAngle(Place.of(front, false), measure),
                right);
    }

    private static Figure of(String name, String said, WheelAngle one, double first, WheelAngle other, double second) {
        Map<WheelAngle, Double> shares = new LinkedHashMap<>();
        shares.put(one, first);
        shares.put(other, second);
        return new Figure(name, said, shares);
    }
}

package putback.angles.linkage;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import putback.angles.numbers.Elimination;
import putback.quantity.Angle;
import putback.quantity.Length;

/**
 * Where a linkage goes no further.
 *
 * @param atMm travel, or shift of the rack
 * @param words a sentence without its full stop
 */
public record Lock(double atMm, String words) {
    /** What carries less than this share of the most loaded is not to blame. */
    private static final double BLAMED = 0.2;

    static Lock ofTravel(Closing closing, Following.Reached reached) {
        double at = reached.goal().travelMm();
        return new Lock(
                at,
                "at a travel of " + new Length(at).text() + " the geometry locks: " + blamed(closing, reached)
                        + " will not let the wheel go further");
    }

    static Lock ofRack(Closing closing, Following.Reached reached, boolean mirrored) {
        double at = mirrored ? -reached.goal().rackMm() : reached.goal().rackMm();
        return new Lock(
                at,
                "with the rack at " + new Length(at).text() + " the geometry locks: " + blamed(closing, reached)
                        + " will not let the wheel steer further");
    }

    /** How far an adjustment came. */
    static String ofWish(Closing closing, Following.Reached reached) {
        return blamed(closing, reached) + " will not let the wheel go further, which is at "
                + turned("camber", reached.goal().camberRad())
                + turned("toe", reached.goal().toeRad());
    }

    private static String turned(String name, @Nullable Double radians) {
        return radians == null ? "" : " " + name + " " + new Angle(Math.toDegrees(radians)).text();
    }

    /** The links that a push on the wheel would load most, which near a lock grows beyond bounds. */
    private static String blamed(Closing closing, Following.Reached reached) {
        double[][] slopes = closing.slopes(reached.state(), reached.goal());
        int size = slopes.length;
        double[][] turned = new double[size][size];
        for (int row = 0; row < size; row++) {
            for (int column = 0; column < size; column++) {
                turned[column][row] = slopes[row][column];
            }
        }
        Elimination balance = Elimination.of(turned);
        if (balance.isSingular()) {
            return "the links";
        }
        double[] push = new double[size];
        push[1] = 0.3;
        push[2] = 1;
        return names(balance.solve(push), closing.names());
    }

    private static String names(double[] forces, List<String> holders) {
        Map<String, Double> loads = new LinkedHashMap<>();
        double most = 0;
        for (int i = 0; i < holders.size(); i++) {
            double load = Math.max(Math.abs(forces[i]), loads.getOrDefault(holders.get(i), 0.0));
            loads.put(holders.get(i), load);
            most = Math.max(most, load);
        }
        double least = BLAMED * most;
        List<String> blamed = loads.entrySet().stream()
                .filter(entry -> entry.getValue() >= least)
                .map(Map.Entry::getKey)
                .toList();
        int last = blamed.size() - 1;
        return last == 0 ? blamed.get(0) : String.join(", ", blamed.subList(0, last)) + " and " + blamed.get(last);
    }
}

package putback.labour.price;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * What penetrant on the night before is worth; see docs/decisions/0007 for what it is taken to do.
 *
 * @param joints ids, what saves most first
 * @param savesMinutes on average, over all of them
 */
public record Soak(List<String> joints, double savesMinutes) {
    private static final double WORTH_NAMING = 0.005;

    public Soak {
        joints = List.copyOf(joints);
    }

    /**
     * @param factor mean of the factor common to the whole car
     */
    static Soak of(List<Stuck> stuck, double factor) {
        List<Stuck> worth = new ArrayList<>();
        double saves = 0;
        for (Stuck one : stuck) {
            if (one.soakingSaves() * factor >= WORTH_NAMING) {
                worth.add(one);
                saves += one.soakingSaves() * factor;
            }
        }
        worth.sort(Comparator.comparingDouble(Stuck::soakingSaves).reversed());
        List<String> joints = new ArrayList<>();
        for (Stuck one : worth) {
            joints.add(one.joint().id());
        }
        return new Soak(joints, saves);
    }
}

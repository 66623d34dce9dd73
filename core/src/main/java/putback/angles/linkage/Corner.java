package putback.angles.linkage;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import putback.angles.space.Vector;
import putback.quantity.Length;

/**
 * One wheel and what holds it, as designed, always as a left wheel: a right one is mirrored.
 *
 * @param right whether it was mirrored
 * @param spinAxis outboard, one long
 * @param tyreRadiusMm above 0
 * @param bolt the joint of carrier and strut that can be shifted; null where there is none
 * @param pitchMm travel of the track rod in one turn; null where it is not known
 */
public record Corner(
        boolean right,
        Layout layout,
        Vector rodInner,
        Vector rodOuter,
        Vector wheelCentre,
        Vector spinAxis,
        double tyreRadiusMm,
        @Nullable Bolt bolt,
        @Nullable Double pitchMm) {

    /** Points nearer than this are one point. */
    private static final double SAME_MM = 1;

    private static final double LOWEST_AXIS_MM = 20;
    private static final double SMALLEST_TYRE_MM = 100;
    private static final double LARGEST_TYRE_MM = 1000;

    /**
     * A two-bolt joint of carrier and strut.
     *
     * @param pivot the bolt that stays
     * @param spacingMm to the bolt that shifts, above 0
     */
    public record Bolt(Vector pivot, double spacingMm) {}

    /**
     * What is impossible about it.
     *
     * @param point its name in a file
     */
    public record Doubt(String point, String message) {}

    /** What cannot be, each with the point it is about; empty where all is well. */
    public List<Doubt> doubts() {
        List<Doubt> doubts = new ArrayList<>();
        Map<String, Vector> points = new LinkedHashMap<>(layout.named());
        points.put("rod-inner", rodInner);
        points.put("rod-outer", rodOuter);
        together(doubts, points);
        List<String> names = List.copyOf(layout.named().keySet());
        arm(doubts, names.get(2), layout.lower());
        if (layout instanceof Layout.DoubleWishbone two) {
            arm(doubts, "upper-ball", two.upper());
        }
        if (doubts.isEmpty() && distance(rodOuter, layout.lower().ball(), layout.upperPivot()) < SAME_MM) {
            doubts.add(new Doubt("rod-outer", "it lies on the steering axis, so the track rod could not steer"));
        }
        sideways(doubts);
        if (!(wheelCentre.y() > 0)) {
            doubts.add(new Doubt(
                    "wheel-centre",
                    "it is not on the " + (right ? "right, where y is below 0" : "left, where y is above 0")
                            + "; check side and the sign of y"));
        }
        if (!(spinAxis.y() > 0)) {
            doubts.add(new Doubt(
                    "spin-axis",
                    "it does not point outboard; a " + (right ? "right" : "left") + " wheel has y "
                            + (right ? "below" : "above") + " 0 in it"));
        }
        return doubts;
    }

    /** Points on the wrong side of the car or upside down, and a tyre that no car has. */
    private void sideways(List<Doubt> doubts) {
        Map<String, Vector> points = new LinkedHashMap<>(layout.named());
        points.put("rod-outer", rodOuter);
        points.forEach((name, point) -> {
            if (point.y() < 0 && wheelCentre.y() > 0) {
                doubts.add(
                        new Doubt(name, "it is on the other side of the car than the wheel; check the sign of its y"));
            }
        });
        if (layout.upperPivot().z() - layout.lower().ball().z() < LOWEST_AXIS_MM) {
            doubts.add(new Doubt(
                    layout instanceof Layout.Strut ? "strut-top" : "upper-ball",
                    "it is not above the lower ball joint; z is upward, so check the heights"));
        }
        if (!(tyreRadiusMm >= SMALLEST_TYRE_MM && tyreRadiusMm <= LARGEST_TYRE_MM)) {
            doubts.add(new Doubt(
                    "tyre-radius",
                    "no tyre of a car has a radius of " + new Length(tyreRadiusMm).text()
                            + "; it may be from 100 mm to 1000 mm"));
        }
    }

    private static void together(List<Doubt> doubts, Map<String, Vector> points) {
        List<String> names = List.copyOf(points.keySet());
        for (int i = 0; i < names.size(); i++) {
            for (int j = 0; j < i; j++) {
                Vector one = points.getOrDefault(names.get(i), Vector.UP);
                if (one.minus(points.getOrDefault(names.get(j), Vector.UP)).length() < SAME_MM) {
                    doubts.add(new Doubt(
                            names.get(i),
                            "it is the same point as " + names.get(j) + ", within a millimetre; one of them is wrong"));
                }
            }
        }
    }

    private static void arm(List<Doubt> doubts, String ball, Layout.Arm arm) {
        boolean apart = arm.front().minus(arm.rear()).length() >= SAME_MM;
        if (apart && distance(arm.ball(), arm.front(), arm.rear()) < SAME_MM) {
            doubts.add(new Doubt(ball, "it lies on the line of the arm's inner pivots, so the arm has no length"));
        }
    }

    /** Of a point from a line. */
    private static double distance(Vector point, Vector one, Vector other) {
        Vector along = other.minus(one);
        return along.cross(point.minus(one)).length() / Math.max(along.length(), Double.MIN_NORMAL);
    }

    State designed() {
        return State.designed(new State.Frame(wheelCentre, bolt == null ? wheelCentre : bolt.pivot()));
    }

    /** What holds the carrier, the track rod last. */
    List<Holder> holders() {
        List<Holder> holders = new ArrayList<>(layout.holders());
        holders.add(new Holder.Rod(rodInner, rodOuter));
        return holders;
    }
}

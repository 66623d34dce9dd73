package putback.angles.linkage;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import putback.angles.space.Vector;

/** How the hub carrier is held, track rod apart; points of a left wheel in mm as designed. */
public sealed interface Layout {
    /** The lower arm. */
    Arm lower();

    /** The upper end of the steering axis. */
    Vector upperPivot();

    /** What holds the carrier above. */
    List<Holder> holders();

    /** Every point with its name in a file. */
    Map<String, Vector> named();

    /**
     * An arm on two inner pivots.
     *
     * @param ball its outer ball joint
     */
    record Arm(Vector front, Vector rear, Vector ball) {
        List<Holder> legs(String name) {
            return List.of(new Holder.Leg(name, front, ball), new Holder.Leg(name, rear, ball));
        }

        /** Direction square to its plane, for a place of the ball joint. */
        Vector normal(Vector ballNow) {
            return front.minus(ballNow).cross(rear.minus(ballNow));
        }
    }

    /**
     * A strut: it slides through its top mount, which swivels.
     *
     * @param clamp a point of the strut's axis that is fixed to the carrier
     */
    record Strut(Arm lower, Vector top, Vector clamp) implements Layout {
        @Override
        public Vector upperPivot() {
            return top;
        }

        @Override
        public List<Holder> holders() {
            List<Holder> holders = new ArrayList<>(lower.legs("the lower arm"));
            Vector along = top.minus(clamp).unit();
            Vector across = along.square();
            holders.add(new Holder.Slide(top, clamp, across));
            holders.add(new Holder.Slide(top, clamp, along.cross(across)));
            return holders;
        }

        @Override
        public Map<String, Vector> named() {
            return Layout.names("arm-front", "arm-rear", "ball-joint", lower, "strut-top", top, "strut-lower", clamp);
        }
    }

    /** Two arms. */
    record DoubleWishbone(Arm lower, Arm upper) implements Layout {
        @Override
        public Vector upperPivot() {
            return upper.ball();
        }

        @Override
        public List<Holder> holders() {
            List<Holder> holders = new ArrayList<>(lower.legs("the lower arm"));
            holders.addAll(upper.legs("the upper arm"));
            return holders;
        }

        @Override
        public Map<String, Vector> named() {
            Map<String, Vector> names = Layout.names(
                    "lower-front",
                    "lower-rear",
                    "lower-ball",
                    lower,
                    "upper-front",
                    upper.front(),
                    "upper-rear",
                    upper.rear());
            names.put("upper-ball", upper.ball());
            return names;
        }
    }

    private static Map<String, Vector> names(
            String front, String rear, String ball, Arm arm, String one, Vector first, String other, Vector second) {
        Map<String, Vector> names = new LinkedHashMap<>();
        names.put(front, arm.front());
        names.put(rear, arm.rear());
        names.put(ball, arm.ball());
        names.put(one, first);
        names.put(other, second);
        return names;
    }
}

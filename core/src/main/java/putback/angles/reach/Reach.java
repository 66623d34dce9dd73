package putback.angles.reach;

import java.util.List;
import java.util.function.DoubleFunction;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import putback.angles.space.Turn;
import putback.angles.space.Vector;

/** How far a hub may move one way before the first of its ties is drawn straight. */
public sealed interface Reach {
    /** It comes to its limit there. */
    record Until(double amount, String tie) implements Reach {}

    /** Nothing is drawn tight as far as was looked. */
    record Free(double amount) implements Reach {}

    /** A limit is not given, so nobody can say: tie it up. */
    record NotKnown(String tie) implements Reach {}

    /** It is too short already where it stands, so something in it is wrong. */
    record TightAlready(String tie) implements Reach {}

    /** How finely a movement is looked through; a tie is not drawn tight and slack again between two of these. */
    int STEPS = 400;

    /** Halvings between two of those. */
    int HALVINGS = 50;

    /**
     * Looks along a movement, in small steps and then by halving.
     *
     * @param most how far to look, above 0
     * @param hub where a point of the hub is after so much of the movement; null where the linkage goes no further
     */
    static Reach along(List<Tie> ties, double most, DoubleFunction<@Nullable UnaryOperator<Vector>> hub) {
        for (Tie tie : ties) {
            if (tie.mostMm() == null) {
                return new NotKnown(tie.name());
            }
        }
        double free = 0;
        for (int i = 0; i <= STEPS; i++) {
            double amount = most * i / STEPS;
            UnaryOperator<Vector> here = hub.apply(amount);
            if (here == null) {
                return new Free(free);
            }
            Tie tight = tight(ties, here);
            if (tight != null) {
                return i == 0 ? new TightAlready(tight.name()) : between(ties, free, amount, hub, tight);
            }
            free = amount;
        }
        return new Free(free);
    }

    private static Reach between(
            List<Tie> ties, double from, double to, DoubleFunction<@Nullable UnaryOperator<Vector>> hub, Tie first) {
        double free = from;
        double reached = to;
        Tie by = first;
        for (int i = 0; i < HALVINGS; i++) {
            double half = (free + reached) / 2;
            UnaryOperator<Vector> here = hub.apply(half);
            Tie tight = here == null ? by : tight(ties, here);
            if (tight == null) {
                free = half;
            } else {
                reached = half;
                by = tight;
            }
        }
        return new Until(free, by.name());
    }

    private static @Nullable Tie tight(List<Tie> ties, UnaryOperator<Vector> hub) {
        for (Tie tie : ties) {
            Double most = tie.mostMm();
            if (most != null && tie.lengthMm(hub.apply(tie.moving())) > most) {
                return tie;
            }
        }
        return null;
    }

    /**
     * How far the top may lean outward about the lower ball joint, the strut being off.
     *
     * @return degrees
     */
    static Reach leaning(List<Tie> ties, Vector ballJoint, double mostDeg) {
        return along(ties, mostDeg, degrees -> {
            Turn outward = Turn.by(new Vector(-Math.toRadians(degrees), 0, 0));
            return point -> ballJoint.plus(outward.of(point.minus(ballJoint)));
        });
    }
}

package putback.angles.reach;

import org.jspecify.annotations.Nullable;
import putback.angles.space.Vector;

/**
 * A hose, a wire or a half-shaft between body and hub, by the straight line between its ends.
 *
 * @param fixed its end on the body
 * @param moving its end on the hub carrier, at ride height
 * @param mostMm the longest that the straight line may become; null where that is not known
 */
public record Tie(
        String name, Vector fixed, Vector moving, @Nullable Double mostMm) {
    /** A hose or wire; it may not be drawn straight, so its free length is the most. */
    public static Tie hose(String name, Vector fixed, Vector moving, @Nullable Double freeMm) {
        return new Tie(name, fixed, moving, freeMm);
    }

    /**
     * A half-shaft between its joints' middles.
     *
     * @param plungeMm by which it may be drawn out from where it stands; null where that is not known
     */
    public static Tie shaft(String name, Vector inner, Vector outer, @Nullable Double plungeMm) {
        double length = outer.minus(inner).length();
        return new Tie(name, inner, outer, plungeMm == null ? null : Double.valueOf(length + plungeMm));
    }

    /** The straight line while the hub's end is somewhere else. */
    public double lengthMm(Vector movingNow) {
        return movingNow.minus(fixed).length();
    }
}

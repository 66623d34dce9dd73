package putback.angles.linkage;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import putback.quantity.Angle;
import putback.quantity.Length;

/**
 * What to shift for a wanted change of camber and toe, the linkage closed again at the same wheel-centre height.
 *
 * @param boltShiftMm rotation at the bolted joint in radians times its spacing, positive tips the wheel top outboard; null
 *     where camber was left alone
 * @param rodMm by which the track rod becomes longer; null where toe was left alone
 * @param rodTurns of the track rod, positive makes it longer; null where its pitch is not known
 * @param before of the wheel as designed, the rack where it was asked for
 */
public record Adjustment(
        @Nullable Double boltShiftMm,
        @Nullable Double rodMm,
        @Nullable Double rodTurns,
        WheelPosition before,
        WheelPosition after) {

    /** An adjustment beyond these is none that a bolt hole or a thread allows, whatever the geometry does. */
    private static final double MOST_DEG = 20;

    /** More than slotted holes and eccentric bolts of a strut give either way. Common practice, no source. */
    private static final double MOST_SHIFT_MM = 4;

    /** A change of toe below this is within what a gauge tells. */
    private static final double TOE_MATTERS_DEG = 0.05;

    /** What came of asking for it. */
    public sealed interface Asked {
        record Found(Adjustment adjustment) implements Asked {}

        /** The question makes no sense for this corner. */
        record Senseless(String because) implements Asked {}

        /** The geometry does not let the wheel go there. */
        record BeyondReach(String because) implements Asked {}
    }

    /**
     * Solves both changes together, exactly.
     *
     * @param camber change wanted; null to leave the bolted joint alone
     * @param toe change wanted; null to leave the track rod alone
     */
    public static Asked of(Corner corner, Length rack, @Nullable Angle camber, @Nullable Angle toe) {
        String senseless = senseless(corner, camber, toe);
        if (!senseless.isEmpty()) {
            return new Asked.Senseless(senseless);
        }
        Closing closing = new Closing(corner);
        Following following = new Following(closing);
        double rackMm = corner.right() ? -rack.millimetres() : rack.millimetres();
        Following.Reached start = following.from(corner.designed(), Goal.at(0, 0), Goal.at(0, rackMm));
        if (!start.arrived()) {
            return new Asked.BeyondReach(
                    Lock.ofRack(closing, start, corner.right()).words());
        }
        WheelPosition before = WheelPosition.of(corner, start.state(), 0);
        Goal from = new Goal(0, rackMm, moved(camber, before.camberDeg(), 0), moved(toe, before.toeDeg(), 0));
        Goal to = new Goal(0, rackMm, moved(camber, before.camberDeg(), 1), moved(toe, before.toeDeg(), 1));
        Following.Reached reached = following.from(start.state(), from, to);
        return reached.arrived()
                ? new Asked.Found(found(corner, reached.state(), before, camber != null, toe != null))
                : new Asked.BeyondReach("the wanted change cannot be reached: " + Lock.ofWish(closing, reached));
    }

    /** What speaks against simply doing it, each a sentence; none where nothing does. */
    public List<String> doubts() {
        List<String> doubts = new ArrayList<>();
        if (isBeyondHoles()) {
            doubts.add("No strut's bolt holes or eccentric bolts give that: more than " + Math.round(MOST_SHIFT_MM)
                    + " mm either way is met on none (common practice, no source). Look for what is bent, check the"
                    + " points of the file, or want less; file no hole.");
        }
        if (boltShiftMm != null && rodMm == null && Math.abs(after.toeDeg() - before.toeDeg()) > TOE_MATTERS_DEG) {
            doubts.add("Toe shifts with it: want toe as well, and set it at the track rod last.");
        }
        return List.copyOf(doubts);
    }

    /** Whether the bolted joint would have to shift further than its holes let it. */
    public boolean isBeyondHoles() {
        return boltShiftMm != null && Math.abs(boltShiftMm) > MOST_SHIFT_MM;
    }

    private static @Nullable Double moved(@Nullable Angle by, double fromDeg, double share) {
        return by == null ? null : Math.toRadians(fromDeg + share * by.degrees());
    }

    private static String senseless(Corner corner, @Nullable Angle camber, @Nullable Angle toe) {
        if (camber != null && corner.layout() instanceof Layout.DoubleWishbone) {
            return "camber cannot be wanted of a double wishbone here: it has no bolted joint of strut and hub carrier;"
                    + " ask for toe alone";
        }
        if (camber != null && corner.bolt() == null) {
            return "camber can be wanted only where the file has adjust: {bolt: {pivot: [..], spacing: 60 mm}}";
        }
        for (Angle angle : new Angle[] {camber, toe}) {
            if (angle != null && Math.abs(angle.degrees()) > MOST_DEG) {
                return "a change of " + angle.text()
                        + " is more than any adjuster gives; write a change such as +0.60deg";
            }
        }
        return "";
    }

    private static Adjustment found(Corner corner, State state, WheelPosition before, boolean bolt, boolean rod) {
        Corner.Bolt joint = corner.bolt();
        Double pitch = corner.pitchMm();
        return new Adjustment(
                bolt && joint != null ? state.boltRad() * joint.spacingMm() : null,
                rod ? state.rodMm() : null,
                rod && pitch != null ? state.rodMm() / pitch : null,
                before,
                WheelPosition.of(corner, state, 0));
    }
}

package putback.angles.linkage;

import org.jspecify.annotations.Nullable;
import putback.quantity.Length;
import putback.quantity.Parsed;

/**
 * What a strut job may shift: the bolted joint within its holes' play, and the ride height with new springs.
 *
 * @param play by which the bolt that shifts may stand off either way
 * @param lower by which the body stands lower than designed; negative where it stands higher
 * @param before as designed
 * @param inward the joint at one end of its play, wheel top in
 * @param outward at the other end
 */
public record StrutJob(Length play, Length lower, WheelPosition before, WheelPosition inward, WheelPosition outward) {
    private static final double MOST_PLAY = 0.2;

    /**
     * The camber that holes wider than their bolts allow each way by themselves: both bolts used oppositely. Source: by
     * definition, atan((hole - bolt) / spacing); the linkage gives the wheel less.
     *
     * @return degrees
     */
    public static double turnOfPlay(double holeMm, double boltMm, double spacingMm) {
        return Math.toDegrees(Math.atan((holeMm - boltMm) / spacingMm));
    }

    /**
     * Where the wheel may come to stand.
     *
     * @param play by which the bolt that shifts may stand off either way, from 0
     * @param lower by which the body stands lower than designed; negative where it stands higher
     * @return refused where the corner has no bolted joint, or does not reach
     */
    public static Parsed<StrutJob> of(Corner corner, Length play, Length lower) {
        Corner.Bolt bolt = corner.bolt();
        double share = bolt == null ? 0 : Math.atan(play.millimetres() / bolt.spacingMm());
        if (play.millimetres() != 0 && bolt == null) {
            return new Parsed.Refused<>(
                    "play can be asked for only where the file has adjust: {bolt: {pivot: [..]," + " spacing: 60 mm}}");
        }
        if (!(share >= 0 && share <= MOST_PLAY)) {
            return new Parsed.Refused<>(play.text() + " is no play of a bolted joint; it may be from 0 to "
                    + new Length(MOST_PLAY * (bolt == null ? 0 : bolt.spacingMm())).text());
        }
        WheelPosition before = at(corner, 0, 0);
        WheelPosition inward = at(corner, -share, lower.millimetres());
        WheelPosition outward = at(corner, share, lower.millimetres());
        return before == null || inward == null || outward == null
                ? new Parsed.Refused<>("the geometry locks before the body stands " + lower.text() + " lower")
                : new Parsed.Value<>(new StrutJob(play, lower, before, inward, outward));
    }

    private static @Nullable WheelPosition at(Corner corner, double boltRad, double travelMm) {
        Closing closing = new Closing(corner);
        Goal design = Goal.at(0, 0);
        State turned = corner.designed().moved(new double[] {0, 0, 0, 0, 0, 0, 0, boltRad});
        State closed = closing.near(turned, design, 0);
        if (closed == null) {
            return null;
        }
        Following.Reached reached = new Following(closing).from(closed, design, Goal.at(travelMm, 0));
        return reached.arrived() ? WheelPosition.of(corner, reached.state(), travelMm) : null;
    }
}

package putback.angles.linkage;

import org.jspecify.annotations.Nullable;
import putback.angles.space.Vector;

/**
 * Where a wheel points and stands. Signs after ISO 8855 for either side: camber positive top outboard, toe positive in,
 * caster positive top rearward, steering-axis inclination (SAI) positive top inboard.
 *
 * @param travelMm of the wheel centre, up
 * @param camberDeg inclination of the wheel plane to the vertical
 * @param frontViewCamberDeg the same seen from the front, which differs when the wheel is steered
 * @param includedDeg camber and SAI together
 * @param scrubMm of the steering axis's piercing point inboard of the contact centre, along the wheel's lateral direction
 * @param trailMm of the piercing point ahead of the contact centre
 * @param halfTrackMm of the contact centre from the middle of the car
 * @param strutMm from strut-lower to strut-top; null without a strut
 * @param centre instantaneous centre in the front view at the wheel centre; null where it is endlessly far
 */
public record WheelPosition(
        double travelMm,
        double camberDeg,
        double frontViewCamberDeg,
        double toeDeg,
        double casterDeg,
        double saiDeg,
        double includedDeg,
        double scrubMm,
        double trailMm,
        double halfTrackMm,
        @Nullable Double strutMm,
        @Nullable Centre centre) {

    /**
     * @param yMm to the left of the middle of the car
     * @param zMm up, from where the file's points are measured
     * @param swingArmMm from the contact centre
     */
    public record Centre(double yMm, double zMm, double swingArmMm) {}

    /** Source: ⟨ISO8855⟩ for the definitions and signs; formulas by definition. */
    static WheelPosition of(Corner corner, State state, double travelMm) {
        Vector spin = state.turn().of(corner.spinAxis());
        Vector ball = state.at(corner.layout().lower().ball());
        Vector upper = upper(corner, state);
        Vector axis = upper.minus(ball).unit();
        Vector down = Vector.UP.times(-1).plus(spin.times(spin.z())).unit();
        Vector contact = state.centre().plus(down.times(corner.tyreRadiusMm()));
        Vector pierced = ball.plus(axis.times((contact.z() - ball.z()) / axis.z()));
        Vector outboard = new Vector(spin.x(), spin.y(), 0).unit();
        double camber = degrees(Math.asin(-spin.z()));
        double sai = degrees(Math.atan2(-axis.y(), axis.z()));
        return new WheelPosition(
                travelMm,
                camber,
                degrees(Math.atan2(-spin.z(), spin.y())),
                degrees(Math.atan2(spin.x(), spin.y())),
                degrees(Math.atan2(-axis.x(), axis.z())),
                sai,
                camber + sai,
                contact.minus(pierced).dot(outboard),
                pierced.x() - contact.x(),
                contact.y(),
                strut(corner, state),
                FrontView.centre(corner, state, contact));
    }

    private static double degrees(double radians) {
        return Math.toDegrees(radians);
    }

    /** The top mount belongs to the body, an upper ball joint to the carrier. */
    private static Vector upper(Corner corner, State state) {
        return corner.layout() instanceof Layout.Strut strut
                ? strut.top()
                : state.at(corner.layout().upperPivot());
    }

    private static @Nullable Double strut(Corner corner, State state) {
        return corner.layout() instanceof Layout.Strut strut
                ? strut.top().minus(state.atStrut(strut.clamp())).length()
                : null;
    }
}

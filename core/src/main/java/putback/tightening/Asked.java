package putback.tightening;

import org.jspecify.annotations.Nullable;
import putback.quantity.Angle;
import putback.quantity.Force;
import putback.quantity.Length;
import putback.quantity.StatedTorque;
import putback.quantity.Torque;

/**
 * One fastener and what is to be known about it.
 *
 * @param nutFactor K of T = K D F in place of friction; null to reckon with friction
 * @param face under the turned side
 * @param prevailing torque of a locking nut before it clamps, zero or more
 * @param hex across flats of the turned side; null when not given
 * @param angle turned further after a torque; null for none
 * @param stiffnessNPerMm of bolt and joint together; null when not known
 */
public record Asked(
        ScrewThread thread,
        PropertyClass grade,
        Goal goal,
        Friction friction,
        @Nullable Double nutFactor,
        BearingFace face,
        Torque prevailing,
        @Nullable Length hex,
        @Nullable Angle angle,
        @Nullable Double stiffnessNPerMm) {

    /** What is given, so that the rest is worked out from it. */
    public sealed interface Goal {
        record ByTorque(StatedTorque stated) implements Goal {}

        record ByClamp(Force clamp) implements Goal {}

        /**
         * @param share of the yield stress, pull and twist together, above 0
         */
        record ByUse(double share) implements Goal {}
    }

    TorqueLaw law() {
        return nutFactor == null
                ? new TorqueLaw.ByFriction(thread, friction, face)
                : new TorqueLaw.ByNutFactor(thread, nutFactor);
    }
}

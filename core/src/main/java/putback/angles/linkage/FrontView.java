package putback.angles.linkage;

import org.jspecify.annotations.Nullable;
import putback.angles.space.Vector;

/** The front view through the wheel centre, in which the wheel turns about one point for a moment. */
final class FrontView {
    private static final double PARALLEL = 1e-9;

    private FrontView() {}

    /**
     * Where the plane of the lower arm and the plane above it (of the upper arm, or square to the strut through its top)
     * cross in the front view; null where they are parallel. Source: textbook construction.
     */
    static WheelPosition.@Nullable Centre centre(Corner corner, State state, Vector contact) {
        Layout.Arm lower = corner.layout().lower();
        Vector below = lower.normal(state.at(lower.ball())).unit();
        Vector above;
        Vector through;
        if (corner.layout() instanceof Layout.Strut strut) {
            through = strut.top();
            above = through.minus(state.atStrut(strut.clamp())).unit();
        } else {
            Layout.Arm upper = ((Layout.DoubleWishbone) corner.layout()).upper();
            through = upper.front();
            above = upper.normal(state.at(upper.ball())).unit();
        }
        double x = state.centre().x();
        double first = below.dot(lower.front()) - below.x() * x;
        double second = above.dot(through) - above.x() * x;
        double across = below.y() * above.z() - below.z() * above.y();
        if (Math.abs(across) < PARALLEL) {
            return null;
        }
        double y = (first * above.z() - below.z() * second) / across;
        double z = (below.y() * second - first * above.y()) / across;
        return new WheelPosition.Centre(corner.right() ? -y : y, z, Math.hypot(contact.y() - y, contact.z() - z));
    }
}

package putback.angles.linkage;

import org.jspecify.annotations.Nullable;
import putback.angles.space.Vector;

/** The hub carrier at some travel, links in place, rack in the middle. */
public final class Hub {
    private final State state;

    private Hub(State state) {
        this.state = state;
    }

    /** Null where the linkage does not go there. */
    public static @Nullable Hub at(Corner corner, double travelMm) {
        Closing closing = new Closing(corner);
        Following.Reached reached = new Following(closing).from(corner.designed(), Goal.at(0, 0), Goal.at(travelMm, 0));
        return reached.arrived() ? new Hub(reached.state()) : null;
    }

    /** Where a point of the carrier is. */
    public Vector of(Vector designed) {
        return state.at(designed);
    }
}

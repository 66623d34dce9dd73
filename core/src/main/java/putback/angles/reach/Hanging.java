package putback.angles.reach;

import java.util.List;
import java.util.function.UnaryOperator;
import putback.angles.linkage.Corner;
import putback.angles.linkage.Hub;
import putback.angles.space.Vector;

/** The ties of one corner, with how far its hub may drop on its links, and lean on its ball joint alone. */
public record Hanging(Corner corner, List<Tie> ties) {
    /** Farther down than any wheel hangs. */
    public static final double MOST_DROP_MM = 250;

    public static final double MOST_LEAN_DEG = 60;

    public Hanging {
        ties = List.copyOf(ties);
    }

    /** With all links in place: mm of the wheel centre below the design. */
    public Reach dropping() {
        return Reach.along(ties, MOST_DROP_MM, drop -> {
            Hub hub = Hub.at(corner, -drop);
            if (hub == null) {
                return null;
            }
            UnaryOperator<Vector> moved = hub::of;
            return moved;
        });
    }

    /** With the strut or the upper arm off: degrees outward about the lower ball joint. */
    public Reach leaning() {
        return Reach.leaning(ties, corner.layout().lower().ball(), MOST_LEAN_DEG);
    }
}

package putback.angles.linkage;

import org.jspecify.annotations.Nullable;

/**
 * What the closed linkage has to meet.
 *
 * @param travelMm of the wheel centre, up, from the design
 * @param rackMm of the rack, to the left
 * @param camberRad wanted, the bolted joint free; null where it is not
 * @param toeRad wanted, the track rod's length free; null where it is not
 */
record Goal(
        double travelMm,
        double rackMm,
        @Nullable Double camberRad,
        @Nullable Double toeRad) {

    static Goal at(double travelMm, double rackMm) {
        return new Goal(travelMm, rackMm, null, null);
    }

    /** Part of the way to another that asks for the same things. */
    Goal toward(Goal other, double share) {
        return new Goal(
                between(travelMm, other.travelMm, share),
                between(rackMm, other.rackMm, share),
                camberRad == null || other.camberRad == null ? null : between(camberRad, other.camberRad, share),
                toeRad == null || other.toeRad == null ? null : between(toeRad, other.toeRad, share));
    }

    private static double between(double from, double to, double share) {
        return share == 1 ? to : from + share * (to - from);
    }
}

package putback.tightening;

import java.util.List;

/**
 * How much a bolt gives, mm for each newton, as the sum of its lengths (VDI 2230 part 1): half a diameter for a hexagon
 * head and four tenths for the nut over the nominal section, half a diameter for the engaged thread over the root.
 */
public final class Compliance {
    private static final double HEAD = 0.5;
    private static final double ENGAGED = 0.5;
    private static final double NUT = 0.4;

    private Compliance() {}

    /**
     * A hexagon bolt with its nut.
     *
     * @param shankMm plain length in the grip
     * @param freeThreadMm thread in the grip that is not engaged
     * @param modulusMpa of the bolt
     */
    public static double bolt(ScrewThread thread, double shankMm, double freeThreadMm, double modulusMpa) {
        double d = thread.diameterMm();
        double full = circle(d);
        double root = circle(thread.rootDiameterMm());
        return List.of(HEAD * d / full, shankMm / full, freeThreadMm / root, ENGAGED * d / root, NUT * d / full)
                        .stream()
                        .mapToDouble(Double::doubleValue)
                        .sum()
                / modulusMpa;
    }

    /**
     * A clamped stack.
     *
     * @param areaMm2 of the body that stands for it
     */
    public static double stack(double gripMm, double areaMm2, double modulusMpa) {
        return gripMm / (areaMm2 * modulusMpa);
    }

    private static double circle(double diameter) {
        return Math.PI / 4 * diameter * diameter;
    }
}

package putback.tightening;

import putback.quantity.Length;

/**
 * The ring under the turned face on which it rubs.
 *
 * @param effectiveDiameterMm diameter at which the friction can be thought to act
 * @param basis where the figure comes from, for a person
 */
public record BearingFace(double effectiveDiameterMm, String basis) {
    /**
     * Least face diameter of ISO 4014 and medium hole of ISO 273 by nominal diameter, mm; the holes from memory, checked
     * against the torques of VDI 2230 tables.
     */
    private static final double[][] FACES = {
        {3, 4.57, 3.4}, {4, 5.88, 4.5}, {5, 6.88, 5.5}, {6, 8.88, 6.6}, {8, 11.63, 9}, {10, 14.63, 11},
        {12, 16.63, 13.5}, {14, 19.37, 15.5}, {16, 22.49, 17.5}, {18, 25.34, 20}, {20, 28.19, 22}, {22, 31.71, 24},
        {24, 33.61, 26}, {27, 38, 30}, {30, 42.75, 33}, {36, 51.11, 39}
    };

    /** MIL-HDBK-60, appendix B: face about 1.5 d across, so that friction acts at (d + 1.5 d) / 2. */
    private static final double OF_DIAMETER = 1.25;

    /** Between the outside of the face and the hole under it: (dw + dh) / 2. */
    public static BearingFace between(Length outside, Length hole) {
        return new BearingFace((outside.millimetres() + hole.millimetres()) / 2, "the bearing diameter given");
    }

    public static BearingFace given(Length effectiveDiameter) {
        return new BearingFace(effectiveDiameter.millimetres(), "the bearing diameter given");
    }

    /** A hexagon head of ISO 4014 on an ISO 273 medium hole; elsewhere 1.25 d after MIL-HDBK-60. */
    public static BearingFace usual(ScrewThread thread) {
        if (!thread.series().isInch()) {
            for (double[] face : FACES) {
                if (face[0] == thread.diameterMm()) {
                    return new BearingFace(
                            (face[1] + face[2]) / 2, "a hexagon head of ISO 4014 on a medium hole of ISO 273");
                }
            }
        }
        return new BearingFace(
                OF_DIAMETER * thread.diameterMm(), "a face that rubs at 1.25 times the thread (MIL-HDBK-60)");
    }
}

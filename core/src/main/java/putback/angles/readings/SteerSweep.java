package putback.angles.readings;

import java.util.List;

/**
 * Caster and inclination of the steering axis from readings of one wheel straight ahead and steered, exactly.
 *
 * <p>The angle between spin axis and steering axis is fixed by the metal, so {@code sin g + cos g (tan SAI cos t + tan
 * caster sin t)} is the same in every position, with camber g and toe t as read there. The straight-ahead reading taken
 * from each of the others leaves linear equations in the two tangents: two settle them, more are met as well as they
 * can be (least squares). Source: derived; see {@code docs/conventions.md}.
 *
 * @param casterGain deg of caster that come of one deg of error in the cambers, as a root of squares
 * @param saiGain the same for the inclination
 */
public record SteerSweep(double casterDeg, double saiDeg, double casterGain, double saiGain) {
    /** Beyond this a gauge good to 0.05 deg leaves more than 2.5 deg open: no reading at all. */
    private static final double MOST_CASTER_GAIN = 50;

    /** The inclination always comes out of a small difference: 20 to 25 at 20 deg either way, 80 to 100 at 10. */
    private static final double MOST_SAI_GAIN = 500;

    private static final double ROUGH_SAI_GAIN = 60;

    /** Readings as alike as this are one reading. */
    private static final double SAME = 1e-9;

    /**
     * @param steered two or more; see {@link #knowsCaster} before its figures are used
     */
    public static SteerSweep of(SteerReading straight, List<SteerReading> steered) {
        double[] from = straight.terms();
        double[] sums = new double[5];
        int count = steered.size();
        double[][] rows = new double[count][];
        for (int i = 0; i < count; i++) {
            double[] to = steered.get(i).terms();
            rows[i] = new double[] {to[1] - from[1], to[2] - from[2], from[0] - to[0]};
            sums[0] += rows[i][0] * rows[i][0];
            sums[1] += rows[i][0] * rows[i][1];
            sums[2] += rows[i][1] * rows[i][1];
            sums[3] += rows[i][0] * rows[i][2];
            sums[4] += rows[i][1] * rows[i][2];
        }
        double determinant = sums[0] * sums[2] - sums[1] * sums[1];
        if (!(determinant > SAME * sums[0] * sums[2])) {
            return new SteerSweep(Double.NaN, Double.NaN, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY);
        }
        double tanSai = (sums[2] * sums[3] - sums[1] * sums[4]) / determinant;
        double tanCaster = (sums[0] * sums[4] - sums[1] * sums[3]) / determinant;
        double sai = 0;
        double caster = 0;
        double saiStraight = 0;
        double casterStraight = 0;
        for (double[] row : rows) {
            double saiShare = (sums[2] * row[0] - sums[1] * row[1]) / determinant;
            double casterShare = (sums[0] * row[1] - sums[1] * row[0]) / determinant;
            sai += saiShare * saiShare;
            caster += casterShare * casterShare;
            saiStraight += saiShare;
            casterStraight += casterShare;
        }
        return new SteerSweep(
                Math.toDegrees(Math.atan(tanCaster)),
                Math.toDegrees(Math.atan(tanSai)),
                Math.sqrt(caster + casterStraight * casterStraight),
                Math.sqrt(sai + saiStraight * saiStraight));
    }

    /** Whether the wheel was steered far enough for the caster; false too where the readings are the same. */
    public boolean knowsCaster() {
        return casterGain <= MOST_CASTER_GAIN && Double.isFinite(casterDeg);
    }

    /** Whether it was steered far enough, and to both sides, for the inclination. */
    public boolean knowsSai() {
        return saiGain <= MOST_SAI_GAIN && Double.isFinite(saiDeg);
    }

    /** What it cannot give, and what to do; empty where it gives both. */
    public String doubt() {
        if (!knowsCaster()) {
            return "the wheel was not steered far enough for a caster, or not at all: an error of 0.05 deg in the camber"
                    + " would be several degrees of caster; steer about 20 deg to the left and to the right";
        }
        return knowsSai()
                ? ""
                : "the wheel was not steered far enough, or to one side only, for the inclination (SAI): an error of"
                        + " 0.05 deg in the camber would be more than 25 deg of it; steer about 20 deg to each side";
    }

    /** Whether small errors of the gauge make large ones of the inclination. */
    public boolean isRough() {
        return !(saiGain <= ROUGH_SAI_GAIN);
    }
}

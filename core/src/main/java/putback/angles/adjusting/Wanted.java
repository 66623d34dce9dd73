package putback.angles.adjusting;

import putback.angles.readings.Figure;

/**
 * A range that a figure should be in, both ends allowed.
 *
 * @param highDeg at least lowDeg
 */
public record Wanted(Figure figure, double lowDeg, double highDeg) {
    /** Closer than this to an end counts as inside: a hundredth of what a gauge shows. */
    private static final double SAME_DEG = 1e-4;

    /** A range narrower than this either way is not centred any harder. */
    private static final double NARROWEST_DEG = 0.01;

    public double middleDeg() {
        return (lowDeg + highDeg) / 2;
    }

    double halfWidthDeg() {
        return Math.max(NARROWEST_DEG, (highDeg - lowDeg) / 2);
    }

    /** How far a value is outside; 0 inside. */
    public double missDeg(double valueDeg) {
        double miss = Math.max(lowDeg - valueDeg, valueDeg - highDeg);
        return miss > SAME_DEG ? miss : 0;
    }
}

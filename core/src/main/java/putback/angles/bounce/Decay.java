package putback.angles.bounce;

import org.jspecify.annotations.Nullable;

/**
 * How one corner comes to rest.
 *
 * @param dampingRatio share of critical damping, above 0 and below 1
 * @param frequencyHz of the swings as recorded, damped
 * @param cycles how many swings stand clear of noise and of a fiftieth of the first
 * @param fit share of the movement that a decaying oscillation explains, 1 is all
 * @param byPeaks damping ratio by logarithmic decrement of the peaks; null where fewer than two stand out
 */
public record Decay(
        double dampingRatio,
        double frequencyHz,
        double cycles,
        double fit,
        @Nullable Double byPeaks) {

    /** Frequency without damping. Source: SDOF. */
    public double naturalHz() {
        return frequencyHz / Math.sqrt(1 - dampingRatio * dampingRatio);
    }

    /** What is left of a swing after one cycle, 0 to 1. Source: SDOF, exp(-2 pi zeta / sqrt(1 - zeta^2)). */
    public double leftAfterACycle() {
        return Math.exp(-2 * Math.PI * dampingRatio / Math.sqrt(1 - dampingRatio * dampingRatio));
    }

    /**
     * Damping ratio from a logarithmic decrement.
     *
     * @param decrement natural logarithm of the ratio of two peaks a cycle apart. Source: SDOF
     */
    public static double ratioOf(double decrement) {
        return decrement / Math.sqrt(4 * Math.PI * Math.PI + decrement * decrement);
    }
}

package putback.labour.time;

import java.util.Arrays;

/**
 * Times of jobs that were drawn, for what cannot be added up exactly. With n draws a percentile at chance p is off by
 * about sqrt(p (1 - p) / n) in chance.
 */
public final class DrawnTimes {
    private final double[] sorted;

    /**
     * @param minutes one or more
     */
    public DrawnTimes(double[] minutes) {
        if (minutes.length == 0) {
            throw new IllegalArgumentException("no times were drawn");
        }
        sorted = minutes.clone();
        Arrays.sort(sorted);
    }

    /** Minutes. */
    public double mean() {
        double sum = 0;
        for (double one : sorted) {
            sum += one;
        }
        return sum / sorted.length;
    }

    /**
     * Minutes that are not exceeded with a chance.
     *
     * @param chance above 0, below 1
     */
    public double quantile(double chance) {
        double at = chance * (sorted.length - 1);
        int below = (int) Math.floor(at);
        int above = Math.min(below + 1, sorted.length - 1);
        return sorted[below] + (at - below) * (sorted[above] - sorted[below]);
    }

    public int count() {
        return sorted.length;
    }
}

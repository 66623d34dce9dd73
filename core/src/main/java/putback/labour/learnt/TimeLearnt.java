package putback.labour.learnt;

import java.util.List;
import putback.quantity.Parsed;

/**
 * A lognormal time that is learnt from jobs done: normal and inverse gamma over mean and variance of the logarithm.
 * Source: BDA, section 3.3.
 *
 * @param meanLog mean of the logarithm of the minutes
 * @param weight of the evidence for the mean: how many jobs stand behind it, those believed counted; above 0
 * @param shape of the inverse gamma, half as many jobs as stand behind the spread; above 0
 * @param scale of the inverse gamma; above 0
 */
public record TimeLearnt(double meanLog, double weight, double shape, double scale) {
    private static final double MOST = 1e9;

    /**
     * What is believed before a job is seen.
     *
     * @param medianMinutes above 0
     */
    public static Parsed<TimeLearnt> of(double medianMinutes, double weight, double shape, double scale) {
        return isSound(medianMinutes) && isSound(weight) && isSound(shape) && isSound(scale)
                ? new Parsed.Value<>(new TimeLearnt(Math.log(medianMinutes), weight, shape, scale))
                : new Parsed.Refused<>("median, weight, shape and scale of a belief all have to be above 0");
    }

    private static boolean isSound(double value) {
        return value > 0 && value <= MOST;
    }

    /**
     * After more jobs.
     *
     * @param minutes of each, above 0
     */
    public Parsed<TimeLearnt> after(List<Double> minutes) {
        if (minutes.isEmpty()) {
            return new Parsed.Value<>(this);
        }
        double sum = 0;
        for (double one : minutes) {
            if (!isSound(one)) {
                return new Parsed.Refused<>("a job of " + one + " minutes teaches nothing; it has to be above 0");
            }
            sum += Math.log(one);
        }
        int count = minutes.size();
        double seen = sum / count;
        double squares = 0;
        for (double one : minutes) {
            squares += (Math.log(one) - seen) * (Math.log(one) - seen);
        }
        double off = seen - meanLog;
        double weightAfter = weight + count;
        return new Parsed.Value<>(new TimeLearnt(
                (weight * meanLog + sum) / weightAfter,
                weightAfter,
                shape + count / 2.0,
                scale + squares / 2 + weight * count * off * off / (2 * weightAfter)));
    }

    /**
     * Minutes that the next job does not exceed with a chance, by Student's t: wide while little is known.
     *
     * @param chance above 0, below 1
     */
    public double quantile(double chance) {
        double width = Math.sqrt(scale * (weight + 1) / (shape * weight));
        return Math.exp(meanLog + width * Beta.studentQuantile(chance, 2 * shape));
    }

    public double medianMinutes() {
        return Math.exp(meanLog);
    }

    /** Spread to reckon with: standard deviation of the logarithm, from the mean of the variance where it has one. */
    public double spread() {
        return Math.sqrt(scale / (shape > 1 ? shape - 1 : shape));
    }
}

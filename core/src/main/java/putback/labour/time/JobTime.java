package putback.labour.time;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import putback.quantity.Parsed;

/**
 * How long a job takes: independent steps one after the other, times a lognormal factor (median 1) common to the whole
 * car. Mean and variance are exact. Percentiles and chances come from adding up on an even grid; they are within 0.1
 * minute of the exact ones, or within 0.1 % where that is more, and the tests hold them to that.
 */
public final class JobTime {
    /** Minutes of one step; more than any takes. */
    public static final double LONGEST = 100_000;

    /** A wider spread says no more than that nothing is known. */
    public static final double WIDEST = 1.5;

    private static final int MOST_STEPS = 2000;

    private final List<StepTime> steps;
    private final double common;
    private final Spread spread;

    private JobTime(List<StepTime> steps, double common, double fineness) {
        this.steps = List.copyOf(steps);
        this.common = common;
        this.spread = Spread.of(steps, common, fineness);
    }

    /**
     * Adds up; or says what is wrong with a step.
     *
     * @param common standard deviation of the logarithm of the common factor, 0 to {@link #WIDEST}
     */
    public static Parsed<JobTime> of(List<StepTime> steps, double common) {
        return of(steps, common, 1);
    }

    /**
     * @param fineness how many times finer the grid is than usual
     */
    static Parsed<JobTime> of(List<StepTime> steps, double common, double fineness) {
        if (steps.isEmpty() || steps.size() > MOST_STEPS) {
            return new Parsed.Refused<>(
                    "a job of " + steps.size() + " steps cannot be reckoned; it needs 1 to " + MOST_STEPS);
        }
        if (!(common >= 0 && common <= WIDEST)) {
            return new Parsed.Refused<>(
                    "the spread common to the car is " + common + "; it has to be from 0 to " + WIDEST);
        }
        for (StepTime one : steps) {
            String wrong = one.wrong();
            if (!wrong.isEmpty()) {
                return new Parsed.Refused<>("step " + one.id() + " " + wrong);
            }
        }
        return new Parsed.Value<>(new JobTime(steps, common, fineness));
    }

    /** Minutes. */
    public double mean() {
        return sumMean() * Math.exp(common * common / 2);
    }

    /** Minutes. */
    public double standardDeviation() {
        return Math.sqrt(variance());
    }

    private double variance() {
        return sumVariance() * factorSquare() + carVariance();
    }

    private double carVariance() {
        double mean = sumMean();
        return mean * mean * Math.exp(common * common) * Math.expm1(common * common);
    }

    private double factorSquare() {
        return Math.exp(2 * common * common);
    }

    private double sumMean() {
        double sum = 0;
        for (StepTime one : steps) {
            sum += one.mean();
        }
        return sum;
    }

    private double sumVariance() {
        double sum = 0;
        for (StepTime one : steps) {
            sum += one.variance();
        }
        return sum;
    }

    /**
     * Minutes that are not exceeded with a chance.
     *
     * @param chance above 0, below 1
     */
    public double quantile(double chance) {
        if (!(chance > 0 && chance < 1)) {
            throw new IllegalArgumentException("a chance above 0 and below 1 is needed, not " + chance);
        }
        return spread.quantile(chance);
    }

    /** Chance that the job takes longer, 0 to 1. */
    public double chanceAbove(double minutes) {
        return Math.max(0, Math.min(1, 1 - spread.below(minutes)));
    }

    /** What the scatter comes from, largest first; the factor of the car has no id. */
    public List<Share> risk() {
        double all = variance();
        List<Share> shares = new ArrayList<>();
        for (StepTime one : steps) {
            shares.add(new Share(one.id(), all == 0 ? 0 : one.variance() * factorSquare() / all));
        }
        shares.add(new Share("", all == 0 ? 0 : carVariance() / all));
        shares.sort(Comparator.comparingDouble(Share::share).reversed());
        return List.copyOf(shares);
    }
}

package putback.labour.time;

/**
 * A time whose logarithm is normal. Source: HB338, section 5.6.2.1.
 *
 * @param medianMinutes half of the times are shorter; 0 or more
 * @param spread standard deviation of the logarithm, 0 or more; 0 for a time that is always the same
 */
public record Lognormal(double medianMinutes, double spread) {
    private static final double FAR = 5.5;
    private static final double NEAR = 4.75;
    private static final double WIDE = 0.75;

    /** Minutes: m exp(s2 / 2). */
    public double mean() {
        return medianMinutes * Math.exp(spread * spread / 2);
    }

    /** Square minutes: m2 exp(s2) (exp(s2) - 1). */
    public double variance() {
        double square = spread * spread;
        return medianMinutes * medianMinutes * Math.exp(square) * Math.expm1(square);
    }

    /** Mean of the squares: m2 exp(2 s2). */
    double meanSquare() {
        return medianMinutes * medianMinutes * Math.exp(2 * spread * spread);
    }

    /** Most frequent time, minutes: m exp(-s2). */
    public double mode() {
        return medianMinutes * Math.exp(-spread * spread);
    }

    /**
     * What is not exceeded with a chance, minutes.
     *
     * @param chance above 0, below 1
     */
    public double quantile(double chance) {
        return medianMinutes * Math.exp(spread * Normal.quantile(chance));
    }

    /** Half the distance between the 16th and the 84th percentile: a width that a long tail does not blow up. */
    double width() {
        return medianMinutes * Math.sinh(spread);
    }

    /** Minutes beyond which 2e-8 lies; 1e-6 for wide spreads, where that already is 35 medians away and more. */
    double longest() {
        return medianMinutes * Math.exp(cut() * spread);
    }

    /** Standard deviations of the logarithm at which the tails are cut. */
    double cut() {
        return spread > WIDE ? NEAR : FAR;
    }

    boolean isFixed() {
        return spread == 0 || medianMinutes == 0;
    }
}

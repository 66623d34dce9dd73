package putback.labour.time;

/**
 * A time whose logarithm is normal. Source: HB338, section 5.6.2.1.
 *
 * @param medianMinutes half of the times are shorter; 0 or more
 * @param spread standard deviation of the logarithm, 0 or more; 0 for a time that is always the same
 */
public record Lognormal(double medianMinutes, double spread) {
    public static final Lognormal NOTHING = new Lognormal(0, 0);

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

    boolean isFixed() {
        return spread == 0 || medianMinutes == 0;
    }
}

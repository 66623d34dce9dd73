package putback.labour.learnt;

import putback.quantity.Parsed;

/**
 * A chance that is learnt by counting: a beta distribution. What is believed beforehand counts like cases seen.
 * Source: BDA, section 2.4.
 *
 * @param yes cases like it, believed and seen; above 0
 * @param no the others; above 0
 */
public record ChanceLearnt(double yes, double no) {
    private static final double MOST = 1e9;

    public static Parsed<ChanceLearnt> of(double yes, double no) {
        return yes > 0 && no > 0 && yes <= MOST && no <= MOST
                ? new Parsed.Value<>(new ChanceLearnt(yes, no))
                : new Parsed.Refused<>("a belief of " + yes + " for and " + no + " against cannot be reckoned with;"
                        + " both have to be above 0");
    }

    /**
     * After more cases.
     *
     * @param seen how many of them were like it, 0 to all
     * @param of how many there were
     */
    public Parsed<ChanceLearnt> after(int seen, int of) {
        return seen >= 0 && seen <= of
                ? new Parsed.Value<>(new ChanceLearnt(yes + seen, no + of - seen))
                : new Parsed.Refused<>(seen + " of " + of + " cannot be; count 0 to all of them");
    }

    /** The chance to reckon with. */
    public double mean() {
        return yes / weight();
    }

    public double variance() {
        return yes * no / (weight() * weight() * (weight() + 1));
    }

    /** Weight of the evidence: how many cases stand behind it, those believed counted. */
    public double weight() {
        return yes + no;
    }

    /**
     * @param chance above 0, below 1: 0.05 and 0.95 for what it is in nine cases of ten
     */
    public double quantile(double chance) {
        return Beta.quantile(chance, yes, no);
    }

    /** Chance that none of the next ones is like it. */
    public double noneOf(int next) {
        double product = 1;
        for (int i = 0; i < next; i++) {
            product *= (no + i) / (weight() + i);
        }
        return product;
    }

    /** How many of the next ones are like it, on average. */
    public double expectedOf(int next) {
        return next * mean();
    }
}

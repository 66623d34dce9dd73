package putback.labour.learnt;

import java.util.function.DoubleUnaryOperator;
import putback.quantity.Parsed;

/**
 * Whether a part is worth a place on the shelf before the job starts. Source: AHM51.
 *
 * @param lacking what it costs when the part is needed and not there; above 0
 * @param lying what it costs when it is there and not needed; above 0
 */
public record ShelfRule(double lacking, double lying) {
    public static Parsed<ShelfRule> of(double lacking, double lying) {
        return lacking > 0 && lying > 0 && Double.isFinite(lacking + lying)
                ? new Parsed.Value<>(new ShelfRule(lacking, lying))
                : new Parsed.Refused<>("costs of " + lacking + " when lacking and " + lying + " when lying cannot be"
                        + " weighed; both have to be above 0");
    }

    /** How surely what is needed should be there: lacking / (lacking + lying). */
    public double criticalRatio() {
        return lacking / (lacking + lying);
    }

    /** One part: it is kept when it is needed with a greater chance than lying / (lacking + lying). */
    public boolean keeps(double chance) {
        return chance > lying / (lacking + lying);
    }

    /**
     * Of parts that may be needed each by itself, how many to keep: the least number that suffices with the critical ratio.
     *
     * @param chances each 0 to 1
     */
    public int count(double... chances) {
        double[] exactly = new double[chances.length + 1];
        exactly[0] = 1;
        for (int i = 0; i < chances.length; i++) {
            for (int k = i + 1; k >= 0; k--) {
                exactly[k] = exactly[k] * (1 - chances[i]) + (k == 0 ? 0 : exactly[k - 1] * chances[i]);
            }
        }
        double enough = 0;
        for (int k = 0; k < chances.length; k++) {
            enough += exactly[k];
            if (enough >= criticalRatio()) {
                return k;
            }
        }
        return chances.length;
    }

    /**
     * The amount to keep of something of which any amount may be needed.
     *
     * @param quantile of the amount that is needed, by chance
     */
    public double amount(DoubleUnaryOperator quantile) {
        return quantile.applyAsDouble(criticalRatio());
    }
}

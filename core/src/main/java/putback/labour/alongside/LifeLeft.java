package putback.labour.alongside;

import putback.quantity.Distance;
import putback.quantity.Parsed;
import putback.sheet.Life;

/**
 * How far a part has come, and how far one looks ahead. Its life is Weibull: R(x) = exp(-(x / scale)^shape), where the
 * scale is the median over (ln 2)^(1 / shape). Source: WEIBULL51.
 *
 * @param mileage driven with this part, 0 or more
 * @param horizon driven from now on, above 0
 */
public record LifeLeft(Distance mileage, Distance horizon) {
    /** What is looked ahead where nobody says: about a year's driving (common practice, no source). */
    public static final Distance USUAL_HORIZON = new Distance(20_000);

    /** Further than a car goes. */
    private static final double FURTHEST = 5_000_000;

    public static Parsed<LifeLeft> of(Distance mileage, Distance horizon) {
        if (!(mileage.kilometres() >= 0 && mileage.kilometres() <= FURTHEST)) {
            return new Parsed.Refused<>(
                    "a mileage of " + mileage.text() + " is not possible; it may be 0 to 5000000 km");
        }
        if (!(horizon.kilometres() > 0 && horizon.kilometres() <= FURTHEST)) {
            return new Parsed.Refused<>(
                    "a horizon of " + horizon.text() + " looks nowhere; it has to be above 0 and may be 5000000 km");
        }
        return new Parsed.Value<>(new LifeLeft(mileage, horizon));
    }

    /** Chance that a part which has lasted so far fails within the horizon: 1 - R(mileage + horizon) / R(mileage). */
    public double fails(Life life) {
        double hazard = worn(life, mileage.kilometres() + horizon.kilometres()) - worn(life, mileage.kilometres());
        return -Math.expm1(-Math.max(0, hazard));
    }

    /** (x / scale)^shape, which is ln 2 at the median. */
    private static double worn(Life life, double kilometres) {
        return Math.log(2) * Math.pow(kilometres / life.medianKilometres(), life.shape());
    }
}

package putback.tightening;

import putback.quantity.Parsed;
import putback.quantity.Torque;

/** The marks of a wrench: a setting falls on one of them. */
public final class Graduation {
    /** Binary noise of a division, as a share of one mark. */
    private static final double NOISE = 1e-9;

    private Graduation() {}

    /**
     * The mark nearest to a setting, never one above the limit; of two equally near the lower.
     *
     * @param step between two marks, above 0
     * @param limit highest setting allowed, at or above the setting
     */
    public static Parsed<Torque> nearest(Torque setting, Torque step, Torque limit) {
        double marks = setting.newtonMetres() / step.newtonMetres();
        double nearest = Math.ceil(marks - 0.5 - NOISE);
        double most = Math.floor(limit.newtonMetres() / step.newtonMetres() + NOISE);
        double mark = Math.min(nearest, most);
        return mark < 1
                ? new Parsed.Refused<>(
                        "no mark of " + step.text() + " lies at or below " + setting.text() + "; take a finer wrench")
                : new Parsed.Value<>(new Torque(mark * step.newtonMetres()));
    }
}

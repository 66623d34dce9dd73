package putback.tightening;

import putback.quantity.Parsed;
import putback.quantity.Torque;

/**
 * Between which readings the fastener is surely within its limits, whatever the wrench's permissible deviation does.
 * The deviation is As = (xa - xr) / xr of the reading xa from the reference xr (ISO 6789), so that xr lies between
 * xa / (1 + d) and xa / (1 - d).
 *
 * @param low least reading
 * @param high greatest reading
 */
public record ReadingWindow(Torque low, Torque high) {
    /** The window of a sheet that names none: a tenth to either side. */
    private static final double USUAL = 0.1;

    /**
     * Refused where the wrench is too coarse for the limits.
     *
     * @param least at the fastener
     * @param most at the fastener
     * @param adapter on the wrench
     * @param deviation permissible, as a share: 0.04 for 4 %; 0 up to, not with, 1
     */
    public static Parsed<ReadingWindow> of(Torque least, Torque most, Adapter adapter, double deviation) {
        double low = adapter.setting(least).newtonMetres() * (1 + deviation);
        double high = adapter.setting(most).newtonMetres() * (1 - deviation);
        return low > high
                ? new Parsed.Refused<>("a wrench with a deviation of " + Torque.figure(deviation * 100)
                        + " % cannot tell whether the fastener is within " + Torque.spanText(least, most)
                        + "; take a finer one")
                : new Parsed.Value<>(new ReadingWindow(new Torque(low), new Torque(high)));
    }

    /** How far a reading is off, as a share of the reference: (xa - xr) / xr (ISO 6789). */
    public static double deviation(Torque reading, Torque reference) {
        return (reading.newtonMetres() - reference.newtonMetres()) / reference.newtonMetres();
    }

    /** The least that is allowed where nobody states it: a tenth below the wanted torque. */
    public static Torque usualLeast(Torque wanted) {
        return new Torque((1 - USUAL) * wanted.newtonMetres());
    }

    /** The most that is allowed where nobody states it: a tenth above the wanted torque. */
    public static Torque usualMost(Torque wanted) {
        return new Torque((1 + USUAL) * wanted.newtonMetres());
    }

    /** As far as a scale reaches that holds some of it. */
    public ReadingWindow within(Torque lowest, Torque highest) {
        return new ReadingWindow(
                low.newtonMetres() < lowest.newtonMetres() ? lowest : low,
                high.newtonMetres() > highest.newtonMetres() ? highest : high);
    }

    /** Both units, the limits rounded inward. */
    public String text() {
        return Torque.windowText(low, high);
    }
}

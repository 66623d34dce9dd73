package putback.tightening;

import putback.quantity.Angle;
import putback.quantity.Length;
import putback.quantity.Parsed;
import putback.quantity.Torque;

/**
 * An adapter on a torque wrench, which makes its lever longer or shorter. S = T L / (L + E cos a) (US Army TM 9-254,
 * angled extension; NAVEDTRA 14315 for the straight ones). A socket extension on the axis of the drive changes nothing.
 *
 * @param factor the setting over the torque: L / (L + E cos a), above 0
 */
public record Adapter(double factor) {
    /** None, or one at a right angle. */
    public static final Adapter NONE = new Adapter(1);

    /** A lever shorter than this share of the wrench is not pulled on. */
    private static final double LEAST_LEVER = 0.1;

    /** Beyond these a small error of a length is a large one of the torque. */
    private static final double LEAST_SURE = 0.6;

    private static final double MOST_SURE = 1.6;

    public Adapter {
        if (!(factor > 0) || Double.isInfinite(factor)) {
            throw new IllegalArgumentException("not a factor of an adapter: " + factor);
        }
    }

    /**
     * Refuses by value what no hand can use.
     *
     * @param wrench L, from the middle of the grip to the drive
     * @param adapter E, from the drive to the fastener; zero for none
     * @param angle a between the adapter and the wrench drawn on: 0 straight on, 90 square, 180 pointing back
     */
    public static Parsed<Adapter> of(Length wrench, Length adapter, Angle angle) {
        double lever = wrench.millimetres();
        double reach = adapter.millimetres();
        if (lever <= 0) {
            return new Parsed.Refused<>(
                    "the wrench is " + wrench.text() + " long; from grip to drive it has to be more" + " than nothing");
        }
        if (reach < 0) {
            return new Parsed.Refused<>("the adapter is " + adapter.text()
                    + " long; it may be nothing, not less. Pointing back is an angle" + " of 180 deg");
        }
        double cosine = cosine(angle.degrees());
        double effective = lever + reach * cosine;
        if (effective <= lever * LEAST_LEVER) {
            return new Parsed.Refused<>("an adapter of " + adapter.text() + " at " + ThreadText.plain(angle.degrees())
                    + " deg on a wrench of " + wrench.text()
                    + " points back to the hand or past it: no pull on it tightens as it should. Take a"
                    + " shorter adapter or a longer wrench");
        }
        return new Parsed.Value<>(new Adapter(lever / effective));
    }

    /** Exact at the quarter turns, where binary arithmetic is not. */
    private static double cosine(double degrees) {
        double within = Math.abs(degrees) % 360;
        if (within == 90 || within == 270) {
            return 0;
        }
        return within == 0 ? 1 : within == 180 ? -1 : Math.cos(Math.toRadians(within));
    }

    /** Whether it makes the lever longer or shorter, so that it matters where the hand pulls. */
    public boolean changesTheLever() {
        return factor != 1;
    }

    /** Whether a small error of the lengths, or of where the hand pulls, makes a large one of the torque. */
    public boolean isDelicate() {
        return factor < LEAST_SURE || factor > MOST_SURE;
    }

    /** What the wrench is set to for a torque at the fastener. */
    public Torque setting(Torque atFastener) {
        return new Torque(atFastener.newtonMetres() * factor);
    }

    /** Torque at the fastener when the wrench reads this. */
    public Torque atFastener(Torque reading) {
        return new Torque(reading.newtonMetres() / factor);
    }
}

package putback.tightening;

import putback.quantity.Angle;
import putback.quantity.Force;

/** What an angle adds after snug: the thread draws bolt and joint together by its lead, and both give. */
public final class Turning {
    private Turning() {}

    /**
     * Clamp load that an angle adds while bolt and joint stay elastic: theta/360 P / (dS + dP).
     *
     * @param complianceMmPerN of bolt and joint together, above 0
     */
    public static Force adds(ScrewThread thread, Angle angle, double complianceMmPerN) {
        return new Force(angle.degrees() / 360 * thread.pitchMm() / complianceMmPerN);
    }

    /** Angle that a clamp load takes, from snug, while bolt and joint stay elastic. */
    public static Angle takes(ScrewThread thread, Force clamp, double complianceMmPerN) {
        return new Angle(360 / thread.pitchMm() * clamp.newtons() * complianceMmPerN);
    }
}

package putback.tightening.toolbox;

/**
 * After how long a torque wrench is calibrated again, whichever comes first.
 *
 * @param months at least 1
 * @param operations at least 1
 */
public record Interval(int months, int operations) {
    /** Twelve months or 5000 operations, unless the garage has a rule of its own: ISO 6789 (2003). */
    public static final Interval DEFAULT = new Interval(12, 5000);
}

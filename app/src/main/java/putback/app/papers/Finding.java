package putback.app.papers;

/**
 * Something that was seen on the car.
 *
 * @param what in one sentence
 * @param risk what may come of it, in words; may be empty
 * @param said what the customer answered, in their own words; may be empty
 */
public record Finding(Kind kind, String what, String risk, String said) {
    /** What became of it. */
    public enum Kind {
        /** Told, nothing asked for. */
        FOUND,
        /** Advised, and the customer said no. */
        DECLINED,
        /** The same, and the car is not safe with it. */
        DECLINED_SAFETY
    }
}

package putback.app.papers;

/**
 * Something that was seen on the car.
 *
 * @param what in one sentence
 * @param urgency how soon, in words; may be empty
 * @param writtenBy who wrote the answer down; may be empty
 * @param said what the customer answered, in their own words; may be empty
 */
public record Finding(Kind kind, String what, String urgency, String writtenBy, String said) {
    /** What became of it. */
    public enum Kind {
        /** Nobody has answered; the paper itself is how it is told. */
        OPEN,
        /** The customer wants it done. */
        AGREED,
        /** Advised, and the customer said no. */
        DECLINED,
        /** The same, and the car is not safe with it. */
        DECLINED_SAFETY
    }
}

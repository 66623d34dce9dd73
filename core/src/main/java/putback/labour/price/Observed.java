package putback.labour.price;

import putback.labour.seized.RustGrade;

/** Something that a garage has seen and counted. Joints are named without a side: both sides teach the same. */
public sealed interface Observed {
    /**
     * A joint was opened or closed.
     *
     * @param minutes of work, interruptions taken out; above 0
     */
    record Took(String joint, boolean opening, double minutes) implements Observed {}

    /**
     * Fasteners of a joint were undone.
     *
     * @param of how many
     * @param seized how many of them would not move at first
     */
    record Rusted(String joint, RustGrade grade, int seized, int of) implements Observed {}

    /**
     * A resort was tried on a fastener.
     *
     * @param minutes of work, interruptions taken out; 0 where nobody looked at the clock
     */
    record Tried(String resort, boolean worked, double minutes) implements Observed {}
}

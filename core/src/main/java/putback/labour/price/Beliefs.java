package putback.labour.price;

import putback.labour.seized.RustGrades;

/** How rusty the car is, and what the garage has seen on others. */
public record Beliefs(RustGrades rust, OwnFigures own) {
    /** Assumptions alone. */
    public static Beliefs of(RustGrades rust) {
        return new Beliefs(rust, OwnFigures.NONE);
    }
}

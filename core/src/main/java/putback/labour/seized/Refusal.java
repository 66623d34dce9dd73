package putback.labour.seized;

import putback.sheet.Worded;

/** Which way a fastener refuses. */
public enum Refusal implements Worded {
    STUCK("stuck"),
    /** The stud or the bolt turns with the nut. */
    SPINS("spins"),
    /** The hexagon does not hold the spanner any more. */
    ROUNDS("rounds"),
    /** The nut is off, but the bolt stays in its bore. */
    IN_BORE("in bore"),
    SNAPPED("snapped");

    private final String word;

    Refusal(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}

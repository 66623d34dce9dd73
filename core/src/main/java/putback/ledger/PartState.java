package putback.ledger;

/** Where a part is. */
public enum PartState {
    ON("on"),
    OFF("off"),
    /** Moved aside, its tethers still on. */
    ASIDE("aside"),
    /** It dangles from its tethers, and an aid carries it. */
    HUNG("hung");

    private final String word;

    PartState(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }
}

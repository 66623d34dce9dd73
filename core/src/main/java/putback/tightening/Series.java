package putback.tightening;

/** The family a thread belongs to. */
public enum Series {
    METRIC_COARSE("ISO metric coarse"),
    METRIC_FINE("ISO metric fine"),
    UNC("unified coarse (UNC)"),
    UNF("unified fine (UNF)"),
    /** Unified, of a pitch in neither of the two common series. */
    UNS("unified special (UNS)");

    private final String words;

    Series(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }

    /** Whether sizes and strengths of this family are stated in inches. */
    public boolean isInch() {
        return this == UNC || this == UNF || this == UNS;
    }
}

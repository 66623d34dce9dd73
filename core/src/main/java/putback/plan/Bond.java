package putback.plan;

/** Why one thing is usually renewed with another. */
public enum Bond {
    /** The same on the other side: it goes in pairs across the axle. */
    PAIR("pair", "goes in pairs across the axle"),
    /** The sheet names it as a companion. */
    COMPANION("companion", "usually renewed with it");

    private final String word;
    private final String said;

    Bond(String word, String said) {
        this.word = word;
        this.said = said;
    }

    /** For other programs. */
    public String word() {
        return word;
    }

    /** For a person. */
    public String said() {
        return said;
    }
}

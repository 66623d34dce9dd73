package putback.labour.seized;

import putback.sheet.Worded;

/** What a resort does to the things around it. */
public enum Hazard implements Worded {
    FLAME("flame"),
    /** Heat without a flame, as of a coil. */
    HOT_METAL("hot metal"),
    /** Cutting and grinding. */
    SPARKS("sparks"),
    BLOWS("blows");

    private final String word;

    Hazard(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}

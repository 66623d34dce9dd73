package putback.sheet;

/** What a flexible part is: it ties, but holds nothing. */
public enum TetherKind implements Worded {
    HOSE("hose"),
    WIRE("wire"),
    CABLE("cable"),
    SHAFT("shaft");

    private final String word;

    TetherKind(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}

package putback.proof;

/** What a comparison comes to. */
public enum Verdict {
    AGREES("agrees"),
    /** It differs, and why is known and said. */
    KNOWN("known disagreement"),
    DISAGREES("disagrees");

    private final String word;

    Verdict(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }
}

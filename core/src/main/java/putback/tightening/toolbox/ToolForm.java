package putback.tightening.toolbox;

/** Tools that come in sizes. */
public enum ToolForm {
    SOCKET("socket", "sockets"),
    PASS_THROUGH("pass-through socket", "pass-through-sockets"),
    SPANNER("spanner", "spanners"),
    FLARE_SPANNER("flare spanner", "flare-spanners"),
    CROWFOOT("crowfoot adapter", "crowfoot-adapters"),
    HEX_KEY("hex key", "hex-keys");

    private final String word;
    private final String key;

    ToolForm(String word, String key) {
        this.word = word;
        this.key = key;
    }

    /** As a plan names it after the size. */
    public String word() {
        return word;
    }

    /** As a toolbox file names the whole row. */
    public String key() {
        return key;
    }
}

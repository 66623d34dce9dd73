package putback.app.asking;

/** Something typed cannot be meant so; the sentence names it and says what would be right. */
public final class Unclear extends Exception {
    private static final long serialVersionUID = 1;

    private final String field;
    private final String said;

    Unclear(String field, String said) {
        super(said, null, false, false);
        this.field = field;
        this.said = said;
    }

    /** Name of the value that is wrong; empty where it is several together. */
    public String field() {
        return field;
    }

    public String said() {
        return said;
    }
}

package putback.app.cli;

/** A command was called in a way that it does not know; the message says what would be right. */
public final class UsageFault extends Exception {
    private static final long serialVersionUID = 1;

    private final String said;

    public UsageFault(String message) {
        super(message, null, false, false);
        said = message;
    }

    String said() {
        return said;
    }
}

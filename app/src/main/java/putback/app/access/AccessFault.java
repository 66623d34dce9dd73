package putback.app.access;

/** The keys cannot be made, read or kept; the message says which and what to do. */
public final class AccessFault extends Exception {
    private static final long serialVersionUID = 1;

    AccessFault(String message, Throwable cause) {
        super(message, cause);
    }
}

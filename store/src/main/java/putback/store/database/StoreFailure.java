package putback.store.database;

/** The books cannot be read or written now. The message says what is wrong and what to do; nothing acknowledged is lost. */
public final class StoreFailure extends RuntimeException {
    private static final long serialVersionUID = 1;

    public StoreFailure(String said, Throwable cause) {
        super(said, cause);
    }

    public StoreFailure(String said) {
        super(said);
    }
}

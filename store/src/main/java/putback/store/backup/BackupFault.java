package putback.store.backup;

/** A backup cannot be written, or cannot be restored. The message is for the person who asked. */
public final class BackupFault extends Exception {
    private static final long serialVersionUID = 1;

    BackupFault(String said) {
        super(said);
    }
}

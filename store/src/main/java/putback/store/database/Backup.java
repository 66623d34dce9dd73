package putback.store.database;

import java.nio.file.Path;

/** A copy of a whole database. */
public interface Backup {
    /** Writes it to a file that does not exist yet; the file is there whole or not at all. */
    void to(Path file);
}

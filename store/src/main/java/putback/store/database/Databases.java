package putback.store.database;

import java.nio.file.Path;

/** Which database an address names. */
public final class Databases {
    private Databases() {}

    /**
     * Opens it.
     *
     * @param where {@code postgresql://...}, or a file, with or without {@code sqlite:} before it
     */
    public static Database open(String where) {
        if (where.startsWith("postgresql://")) {
            return PostgresDatabase.open(where);
        }
        return SqliteDatabase.open(Path.of(where.startsWith("sqlite:") ? where.substring(7) : where));
    }
}

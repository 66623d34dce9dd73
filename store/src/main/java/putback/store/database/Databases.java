package putback.store.database;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;

/** Which database an address names. */
public final class Databases {
    private static final String SERVER = "postgresql://";
    private static final String FILE = "sqlite:";

    private Databases() {}

    /**
     * Opens it, and brings it to the schema that this program knows.
     *
     * @param where {@code postgresql://...}, or a file, with or without {@code sqlite:} before it
     */
    public static Database open(String where) {
        return isServer(where) ? PostgresDatabase.open(where) : SqliteDatabase.open(file(where));
    }

    /** Opens books that are there, and leaves their schema as it is. */
    public static Database look(String where) {
        return isServer(where) ? PostgresDatabase.open(where, Schema.AS_IT_IS) : SqliteDatabase.look(file(where));
    }

    /**
     * Opens a new database at a schema that may be an older one; what is there already must be empty.
     *
     * @param schema 1 to {@link #newestSchema()}
     */
    public static Database fresh(String where, int schema) {
        return isServer(where) ? PostgresDatabase.open(where, schema) : SqliteDatabase.open(file(where), schema);
    }

    /** The newest schema that this program knows. */
    public static int newestSchema() {
        return Schema.NEWEST;
    }

    /** Whether the address is a server's. */
    public static boolean isServer(String where) {
        return where.startsWith(SERVER);
    }

    /** The file that an address names, which is not a server's. */
    public static Path file(String where) {
        try {
            return Path.of(where.startsWith(FILE) ? where.substring(FILE.length()) : where);
        } catch (InvalidPathException notOne) {
            throw new StoreFailure(where + ": this cannot be the name of a file.", notOne);
        }
    }

    /** An address as it may be shown. */
    public static String shown(String where) {
        return isServer(where) ? PostgresDatabase.withoutPassword(where) : where;
    }
}

package putback.store.database;

import java.util.function.Function;
import org.jdbi.v3.core.Handle;

/**
 * A database with the garage's books in it, brought to this program's schema when it is opened.
 *
 * <p>What {@link #write} returned from is on disk. Failures come as {@link StoreFailure}, in words.
 */
public sealed interface Database extends AutoCloseable permits SqliteDatabase, PostgresDatabase {

    /** Reads; everything the work sees belongs to one moment. */
    <T> T read(Function<Handle, T> work);

    /** Changes, all or nothing; who listens hears of what the work told once it is on disk. */
    <T> T write(Function<Change, T> work);

    /** Tells of what others change in the same database, and this program too. */
    Changes changes();

    /** The file or the server's address, without a password. */
    String where();

    /** The number of the schema that it is at; 0 for none. */
    int schema();

    /** Whether what lies there is whole. */
    Soundness soundness();

    @Override
    void close();
}

package putback.store.books;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.function.Function;
import org.jdbi.v3.core.Handle;
import putback.store.database.Change;
import putback.store.database.Database;

/** One garage's books in a database that may hold those of several. */
public final class Books {
    private static final DateTimeFormatter TIME =
            DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm:ss.SSS'Z'").withZone(ZoneOffset.UTC);

    private final Database database;
    private final String garage;
    private final Clock clock;
    private final Ids ids;

    public Books(Database database, String garage, Clock clock) {
        this.database = database;
        this.garage = garage;
        this.clock = clock;
        ids = new Ids(clock);
    }

    /** Whose books these are. */
    public String garage() {
        return garage;
    }

    /** The time as it is kept: UTC, with milliseconds. */
    public String now() {
        return text(clock.instant());
    }

    /** A time as it is kept. */
    public static String text(Instant at) {
        return TIME.format(at);
    }

    /** The clock by which times are written. */
    public Clock clock() {
        return clock;
    }

    /** A new id, later in the order of text than those before it. */
    public String newId() {
        return ids.next();
    }

    /** Where they lie. */
    public Database database() {
        return database;
    }

    <T> T read(Function<Handle, T> work) {
        return database.read(work);
    }

    /** Changes, all or nothing. Several books may be changed in one go. */
    public <T> T write(Function<Change, T> work) {
        return database.write(work);
    }
}

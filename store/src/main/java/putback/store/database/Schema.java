package putback.store.database;

import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.JdbiException;

/** Brings a database to the schema that this program knows. */
public final class Schema {
    /** The number of the last migration file. */
    static final int NEWEST = 5;

    /** Wanted of books that are only looked at. */
    static final int AS_IT_IS = 0;

    private static final String FOLDER = "classpath:putback/store/database/";

    private Schema() {}

    /** What differs from one database to the other. */
    enum Kind {
        SQLITE("sqlite", "select name from sqlite_master where type = 'table' and name not like 'sqlite_%'"),
        POSTGRESQL(
                "postgresql", "select table_name from information_schema.tables where table_schema = current_schema()");

        final String folder;
        final String tables;

        Kind(String folder, String tables) {
            this.folder = folder;
            this.tables = tables;
        }
    }

    /**
     * Migrates when it has to; the migration library is loaded only then, which saves half a second of most starts.
     *
     * @param wanted a version, or {@link #AS_IT_IS} for whichever it is at
     */
    static void bring(String where, DataSource source, Kind kind, int wanted) {
        Jdbi jdbi = Jdbi.create(source);
        int is = version(where, jdbi);
        if (is > NEWEST) {
            throw new StoreFailure(where + ": these books are at schema " + is + ", but this program knows only up to "
                    + NEWEST + ". They were written by a newer Putback; start that one.");
        }
        if (is == 0 && (wanted == AS_IT_IS || holdsOthers(jdbi, kind))) {
            throw new StoreFailure(where + ": these are not Putback's books. Maybe name others with --database.");
        }
        if (is < wanted) {
            Flyway.configure(Schema.class.getClassLoader())
                    .dataSource(source)
                    .locations(FOLDER + "both", FOLDER + kind.folder)
                    .table("schema_history")
                    .target(String.valueOf(wanted))
                    .loggers("slf4j")
                    .load()
                    .migrate();
        }
    }

    private static boolean holdsOthers(Jdbi jdbi, Kind kind) {
        List<String> found = jdbi.withHandle(
                handle -> handle.createQuery(kind.tables).mapTo(String.class).list());
        return !found.isEmpty() && !found.contains("schema_history");
    }

    static int version(String where, Jdbi jdbi) {
        try {
            Optional<String> newest = jdbi.withHandle(handle -> handle.createQuery(
                            "select version from schema_history where success and version is not null"
                                    + " order by installed_rank desc limit 1")
                    .mapTo(String.class)
                    .findFirst());
            return newest.map(Integer::parseInt).orElse(0);
        } catch (JdbiException failure) {
            if (failure.getCause() instanceof SQLException cause && isNoSuchTable(cause)) {
                return 0;
            }
            throw Wording.of(where, failure);
        }
    }

    private static boolean isNoSuchTable(SQLException cause) {
        return cause.getSQLState() == null
                ? (cause.getErrorCode() & 0xff) == 1
                : cause.getSQLState().equals("42P01");
    }

    /** The tables that are there, children last; books at an older schema may lack some. */
    public static List<String> tables(Handle handle) {
        boolean server = isServer(handle);
        List<String> there = handle.createQuery((server ? Kind.POSTGRESQL : Kind.SQLITE).tables)
                .mapTo(String.class)
                .list();
        return tables().stream().filter(there::contains).toList();
    }

    private static boolean isServer(Handle handle) {
        try {
            return handle.getConnection().getMetaData().getDatabaseProductName().equals("PostgreSQL");
        } catch (SQLException failure) {
            throw Wording.of("the books", failure);
        }
    }

    /** What every table is called, children last. */
    static List<String> tables() {
        return List.of(
                "person",
                "device",
                "session",
                "pairing",
                "customer",
                "car",
                "car_sheet",
                "kept_sheet",
                "part_price",
                "job",
                "job_move",
                "estimate",
                "estimate_line",
                "approval",
                "finding",
                "part_line",
                "recheck",
                "photo",
                "road_test",
                "event",
                "heard",
                "taught",
                "lesson",
                "link",
                "audit",
                "setting",
                "counter");
    }
}

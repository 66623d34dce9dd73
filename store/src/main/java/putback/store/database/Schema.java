package putback.store.database;

import java.util.List;
import java.util.Optional;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.JdbiException;

/** Brings a database to the schema that this program knows. */
final class Schema {
    /** The number of the last migration file. */
    static final int NEWEST = 3;

    private static final String FOLDER = "classpath:putback/store/database/";

    private Schema() {}

    /**
     * Migrates when it has to; the migration library is loaded only then, which saves half a second of most starts.
     *
     * @param kind sqlite or postgresql: where statements that differ lie
     */
    static void bring(String where, DataSource source, String kind) {
        int is = version(Jdbi.create(source));
        if (is > NEWEST) {
            throw new StoreFailure(where + ": these books are at schema " + is + ", but this program knows only up to "
                    + NEWEST + ". They were written by a newer Putback; start that one.");
        }
        if (is < NEWEST) {
            Flyway.configure(Schema.class.getClassLoader())
                    .dataSource(source)
                    .locations(FOLDER + "both", FOLDER + kind)
                    .table("schema_history")
                    .loggers("slf4j")
                    .load()
                    .migrate();
        }
    }

    private static int version(Jdbi jdbi) {
        try {
            Optional<String> newest = jdbi.withHandle(handle -> handle.createQuery(
                            "select version from schema_history where success and version is not null"
                                    + " order by installed_rank desc limit 1")
                    .mapTo(String.class)
                    .findFirst());
            return newest.map(Integer::parseInt).orElse(0);
        } catch (JdbiException none) {
            return 0;
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
                "job",
                "job_move",
                "approval",
                "finding",
                "part_line",
                "recheck",
                "photo",
                "road_test",
                "event",
                "heard",
                "link",
                "audit",
                "setting",
                "counter");
    }
}

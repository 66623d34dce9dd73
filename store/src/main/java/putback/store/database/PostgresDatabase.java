package putback.store.database;

import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.HikariDataSource;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.transaction.TransactionIsolationLevel;

/** A server that several nodes share; they tell each other what changes. */
public final class PostgresDatabase implements Database {
    private static final int CONNECTIONS = 10;
    private static final int PATIENCE_MS = 5000;

    private final String where;
    private final HikariDataSource source;
    private final Jdbi jdbi;
    private final Changes changes = new Changes();
    private final PostgresWatch watch;

    private PostgresDatabase(String address, int schema) {
        where = withoutPassword(address);
        HikariConfig pool = new HikariConfig();
        pool.setJdbcUrl("jdbc:" + address);
        pool.setMaximumPoolSize(CONNECTIONS);
        pool.setMinimumIdle(1);
        pool.setConnectionTimeout(PATIENCE_MS);
        pool.setPoolName("books");
        source = new HikariDataSource(pool);
        try {
            Schema.bring(where, source, Schema.Kind.POSTGRESQL, schema);
        } catch (RuntimeException failure) {
            source.close();
            throw failure;
        }
        jdbi = Jdbi.create(source);
        watch = new PostgresWatch("jdbc:" + address, changes);
    }

    /**
     * Connects.
     *
     * @param address {@code postgresql://HOST:PORT/NAME?user=..&password=..}
     */
    public static PostgresDatabase open(String address) {
        return open(address, Schema.NEWEST);
    }

    static PostgresDatabase open(String address, int schema) {
        try {
            return new PostgresDatabase(address, schema);
        } catch (StoreFailure said) {
            throw said;
        } catch (RuntimeException failure) {
            throw Wording.of(withoutPassword(address), failure);
        }
    }

    static String withoutPassword(String address) {
        return address.replaceAll("([?&]password=)[^&]*", "$1...");
    }

    @Override
    public <T> T read(Function<Handle, T> work) {
        try {
            return jdbi.inTransaction(TransactionIsolationLevel.REPEATABLE_READ, work::apply);
        } catch (RuntimeException failure) {
            throw said(failure);
        }
    }

    @Override
    public <T> T write(Function<Change, T> work) {
        try {
            List<Change> made = new ArrayList<>();
            T result = jdbi.inTransaction(handle -> {
                Change change = new Change(handle);
                made.add(change);
                T value = work.apply(change);
                for (String topic : change.topics()) {
                    handle.createQuery("select pg_notify('putback', :topic)")
                            .bind("topic", topic)
                            .mapToMap()
                            .list();
                }
                return value;
            });
            made.forEach(change -> changes.tell(change.topics()));
            return result;
        } catch (RuntimeException failure) {
            throw said(failure);
        }
    }

    private RuntimeException said(RuntimeException failure) {
        return failure instanceof org.jdbi.v3.core.JdbiException ? Wording.of(where, failure) : failure;
    }

    @Override
    public Changes changes() {
        return changes;
    }

    @Override
    public String where() {
        return where;
    }

    @Override
    public int schema() {
        return Schema.version(where, jdbi);
    }

    /** The server checks rows against each other as they are written; what is left to look at is that they can be read. */
    @Override
    public Soundness soundness() {
        return read(handle -> {
            for (String table : Schema.tables(handle)) {
                handle.createQuery("select count(*) from " + table)
                        .mapTo(Long.class)
                        .one();
            }
            return new Soundness(List.of());
        });
    }

    @Override
    public void close() {
        watch.close();
        source.close();
    }
}

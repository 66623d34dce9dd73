package putback.store.database;

import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.HikariDataSource;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.sqlite.SQLiteConfig;

/** One file. One connection writes, a few read; a commit is on disk when it returns (WAL, synchronous FULL). */
public final class SqliteDatabase implements Database {
    private static final int READERS = 4;
    private static final int PATIENCE_MS = 5000;

    private final Path file;
    private final HikariDataSource writing;
    private final HikariDataSource reading;
    private final Jdbi writer;
    private final Jdbi reader;
    private final Changes changes = new Changes();
    private final SqliteWatch watch;

    private SqliteDatabase(Path file, int schema) {
        this.file = file;
        writing = pool(file, 1, false);
        try {
            Schema.bring(file.toString(), writing, Schema.Kind.SQLITE, schema);
            reading = pool(file, READERS, true);
        } catch (RuntimeException failure) {
            writing.close();
            throw failure instanceof StoreFailure said ? said : Wording.of(file.toString(), failure);
        }
        writer = Jdbi.create(writing);
        reader = Jdbi.create(reading);
        watch = new SqliteWatch(file, changes);
    }

    /** Opens the file, or makes it where there is none; its folder is made too. */
    public static SqliteDatabase open(Path file) {
        return open(file, Schema.NEWEST);
    }

    /** Opens the file as it is. */
    static SqliteDatabase look(Path file) {
        if (!Files.isRegularFile(file)) {
            throw new StoreFailure(file + ": there are no books here. Maybe name others with --data or --database.");
        }
        return open(file, Schema.AS_IT_IS);
    }

    static SqliteDatabase open(Path file, int schema) {
        try {
            Path folder = file.toAbsolutePath().getParent();
            if (folder != null) {
                Folders.make(folder);
            }
            Folders.reserve(file);
            return new SqliteDatabase(file, schema);
        } catch (IOException failure) {
            throw new StoreFailure(
                    file + ": its folder cannot be made (" + failure.getMessage() + "). Maybe name another.", failure);
        } catch (StoreFailure said) {
            throw said;
        } catch (RuntimeException failure) {
            throw Wording.of(file.toString(), failure);
        }
    }

    private static HikariDataSource pool(Path file, int size, boolean onlyReads) {
        SQLiteConfig config = new SQLiteConfig();
        config.setJournalMode(SQLiteConfig.JournalMode.WAL);
        config.setSynchronous(SQLiteConfig.SynchronousMode.FULL);
        config.enforceForeignKeys(true);
        config.setBusyTimeout(PATIENCE_MS);
        config.setTransactionMode(
                onlyReads ? SQLiteConfig.TransactionMode.DEFERRED : SQLiteConfig.TransactionMode.IMMEDIATE);
        HikariConfig pool = new HikariConfig();
        pool.setJdbcUrl("jdbc:sqlite:" + file);
        pool.setDataSourceProperties(config.toProperties());
        pool.setMaximumPoolSize(size);
        pool.setMinimumIdle(1);
        pool.setPoolName(onlyReads ? "reading" : "writing");
        if (onlyReads) {
            pool.setConnectionInitSql("pragma query_only = on");
        }
        return new HikariDataSource(pool);
    }

    @Override
    public <T> T read(Function<Handle, T> work) {
        try {
            return reader.inTransaction(work::apply);
        } catch (RuntimeException failure) {
            throw said(failure);
        }
    }

    @Override
    public <T> T write(Function<Change, T> work) {
        try {
            List<Change> made = new ArrayList<>();
            T result = writer.inTransaction(handle -> {
                Change change = new Change(handle);
                made.add(change);
                return work.apply(change);
            });
            made.forEach(change -> changes.tell(change.topics()));
            return result;
        } catch (RuntimeException failure) {
            throw said(failure);
        }
    }

    private RuntimeException said(RuntimeException failure) {
        return failure instanceof org.jdbi.v3.core.JdbiException ? Wording.of(file.toString(), failure) : failure;
    }

    @Override
    public Changes changes() {
        return changes;
    }

    @Override
    public String where() {
        return file.toString();
    }

    @Override
    public int schema() {
        return Schema.version(file.toString(), writer);
    }

    @Override
    public Soundness soundness() {
        return read(handle -> {
            List<String> faults = new ArrayList<>();
            for (String line : handle.createQuery("pragma integrity_check(20)").mapTo(String.class)) {
                if (!line.equals("ok")) {
                    faults.add(line);
                }
            }
            handle.createQuery("pragma foreign_key_check")
                    .mapToMap()
                    .forEach(row -> faults.add("row "
                            + row.get("rowid") + " of " + row.get("table") + " names a row of " + row.get("parent")
                            + " that is not there"));
            return new Soundness(faults);
        });
    }

    @Override
    public void close() {
        watch.close();
        reading.close();
        writing.close();
    }
}

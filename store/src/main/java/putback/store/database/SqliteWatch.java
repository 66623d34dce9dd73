package putback.store.database;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Set;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.ScheduledFuture;
import java.util.concurrent.TimeUnit;

/** Notices that another program changed the file; asking its data version reads no table. */
final class SqliteWatch implements AutoCloseable {
    private static final int EVERY_MS = 250;

    private final Connection connection;
    private final Statement statement;
    private final Changes changes;
    private final ScheduledExecutorService clockwork = Executors.newSingleThreadScheduledExecutor(work -> {
        Thread thread = new Thread(work, "watching the books");
        thread.setDaemon(true);
        return thread;
    });
    private final ScheduledFuture<?> looking;
    private long seen;

    SqliteWatch(Path file, Changes changes) {
        this.changes = changes;
        try {
            connection = DriverManager.getConnection("jdbc:sqlite:" + file);
            statement = connection.createStatement();
            seen = version();
        } catch (SQLException failure) {
            throw Wording.of(file.toString(), failure);
        }
        looking = clockwork.scheduleWithFixedDelay(this::look, EVERY_MS, EVERY_MS, TimeUnit.MILLISECONDS);
    }

    private long version() throws SQLException {
        try (ResultSet rows = statement.executeQuery("pragma data_version")) {
            return rows.getLong(1);
        }
    }

    /** This program's own writers are other connections too: hearing of a change twice does no harm. */
    private synchronized void look() {
        try {
            long now = version();
            if (now != seen) {
                seen = now;
                changes.tell(Set.of(Changes.ALL));
            }
        } catch (SQLException passing) {
            // The next look asks again; reading and writing say what is wrong.
        }
    }

    @Override
    public void close() {
        looking.cancel(false);
        clockwork.shutdownNow();
        synchronized (this) {
            try {
                connection.close();
            } catch (SQLException already) {
                // It is gone either way.
            }
        }
    }
}

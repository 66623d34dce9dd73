package putback.store.database;

import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.LinkedHashSet;
import java.util.Set;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;
import org.postgresql.PGConnection;
import org.postgresql.PGNotification;

/** Listens to what the other nodes tell, on a connection of its own, which is opened again when it breaks. */
final class PostgresWatch implements AutoCloseable {
    private static final int WAIT_MS = 1000;
    private static final int PATIENCE_MS = 5000;

    private final String address;
    private final Changes changes;
    private final Thread thread;
    private final CountDownLatch listening = new CountDownLatch(1);
    private volatile boolean again;
    private volatile boolean ended;

    PostgresWatch(String address, Changes changes) {
        this.address = address;
        this.changes = changes;
        thread = new Thread(this::listen, "listening to the other nodes");
        thread.setDaemon(true);
        thread.start();
        awaitFirst();
    }

    /** So that nothing is missed that is told after the books are open; a server that is slow is not waited for. */
    private void awaitFirst() {
        try {
            if (!listening.await(PATIENCE_MS, TimeUnit.MILLISECONDS)) {
                again = true;
            }
        } catch (InterruptedException ending) {
            Thread.currentThread().interrupt();
        }
    }

    private void listen() {
        while (!ended) {
            try (Connection connection = DriverManager.getConnection(address);
                    Statement statement = connection.createStatement()) {
                statement.execute("listen putback");
                listening.countDown();
                if (again) {
                    changes.tell(Set.of(Changes.ALL));
                }
                hear(connection.unwrap(PGConnection.class));
            } catch (SQLException broken) {
                again = true;
                rest();
            }
        }
    }

    private void hear(PGConnection connection) throws SQLException {
        while (!ended) {
            PGNotification @Nullable [] heard = connection.getNotifications(WAIT_MS);
            if (heard != null) {
                Set<String> topics = new LinkedHashSet<>();
                for (PGNotification one : heard) {
                    topics.add(one.getParameter());
                }
                changes.tell(topics);
            }
        }
    }

    private void rest() {
        try {
            Thread.sleep(WAIT_MS);
        } catch (InterruptedException ending) {
            ended = true;
        }
    }

    @Override
    public void close() {
        ended = true;
        thread.interrupt();
    }
}

package putback.store.database;

import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/** Waits until one of some topics was heard. */
final class Heard implements AutoCloseable {
    private static final int PATIENCE_S = 20;

    private final CountDownLatch heard = new CountDownLatch(1);
    private final Set<String> all = ConcurrentHashMap.newKeySet();
    private final Runnable end;

    Heard(Database database, String... waitedFor) {
        Set<String> topics = Set.of(waitedFor);
        end = database.changes().listen(topic -> {
            all.add(topic);
            if (topics.contains(topic)) {
                heard.countDown();
            }
        });
    }

    boolean inTime() throws InterruptedException {
        return heard.await(PATIENCE_S, TimeUnit.SECONDS);
    }

    Set<String> all() {
        return Set.copyOf(all);
    }

    @Override
    public void close() {
        end.run();
    }
}

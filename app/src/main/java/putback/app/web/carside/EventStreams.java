package putback.app.web.carside;

import io.javalin.http.sse.SseClient;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.ScheduledFuture;
import java.util.concurrent.TimeUnit;
import putback.store.books.Books;
import putback.store.books.Events;
import putback.store.books.KeptEvent;
import putback.store.database.Changes;

/** Tells the devices at the cars what the others did, as soon as it is on disk. */
final class EventStreams {
    private static final int BREATH_S = 15;

    private final Events events;
    private final Set<Following> all = ConcurrentHashMap.newKeySet();
    private final ExecutorService telling = Executors.newCachedThreadPool(EventStreams::thread);
    private final ScheduledExecutorService breathing = Executors.newSingleThreadScheduledExecutor(EventStreams::thread);

    private final ScheduledFuture<?> breath;
    private final Runnable deaf;

    EventStreams(Books books, Events events) {
        this.events = events;
        deaf = books.database().changes().listen(this::changed);
        breath = breathing.scheduleWithFixedDelay(
                () -> all.forEach(one -> telling.execute(one::breathe)), BREATH_S, BREATH_S, TimeUnit.SECONDS);
    }

    /** Ends all of them. */
    void close() {
        deaf.run();
        breath.cancel(false);
        breathing.shutdownNow();
        telling.shutdownNow();
        all.forEach(one -> one.client.close());
    }

    private static Thread thread(Runnable work) {
        Thread thread = new Thread(work, "carside");
        thread.setDaemon(true);
        return thread;
    }

    private void changed(String topic) {
        for (Following one : all) {
            if (topic.equals(Changes.ALL) || topic.equals("job:" + one.job)) {
                telling.execute(one::tellOfChange);
            }
        }
    }

    /** Sends what comes after a number, now and from now on. */
    void follow(SseClient client, String job, int number) {
        Following one = new Following(client, job, number);
        all.add(one);
        client.onClose(() -> all.remove(one));
        client.keepAlive();
        one.breathe();
        one.tell();
    }

    /** As it goes over the wire: the event with its number in the chain. */
    static String line(KeptEvent kept) {
        return "{\"n\":" + kept.number() + "," + kept.body().substring(1);
    }

    private final class Following {
        final SseClient client;
        final String job;
        private int reached;

        Following(SseClient client, String job, int reached) {
            this.client = client;
            this.job = job;
            this.reached = reached;
        }

        synchronized void tell() {
            for (KeptEvent kept : events.since(job, reached)) {
                client.sendEvent("did", line(kept), String.valueOf(kept.number()));
                reached = kept.number();
            }
        }

        /** What changed without an event is the job itself: what it renews, what was said to it. */
        synchronized void tellOfChange() {
            int before = reached;
            tell();
            if (reached == before) {
                client.sendEvent("job", "changed");
            }
        }

        /** Also finds out whether anybody is still there. */
        synchronized void breathe() {
            client.sendComment("here");
        }
    }
}

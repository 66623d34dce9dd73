package putback.store.books;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.locks.ReentrantReadWriteLock;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import putback.ledger.Did;
import putback.ledger.Event;
import putback.ledger.Promised;
import putback.ledger.Standing;
import putback.ledger.chain.Verdict;
import putback.store.database.Database;
import putback.store.database.SqliteDatabase;

/**
 * Three devices on one car with a network that loses, doubles and shuffles what they send, and answers; the program is
 * ended and started again all the while, and every clock is wrong in its own way.
 */
class StormRandomTest {
    private static final int EACH = 700;
    private static final List<Did> DIDS = List.of(Did.UNDO, Did.START, Did.RUN_DOWN, Did.TIGHTEN, Did.SECOND_LOOK);

    @TempDir
    private Path folder;

    private final ReentrantReadWriteLock running = new ReentrantReadWriteLock();
    private Database database;
    private Books books;
    private Events events;

    private void start() {
        database = SqliteDatabase.open(folder.resolve("garage.db"));
        books = new Books(database, "g1", Clock.systemUTC());
        events = new Events(books);
    }

    private void startAgain() {
        running.writeLock().lock();
        try {
            database.close();
            start();
        } finally {
            running.writeLock().unlock();
        }
    }

    private String job() {
        Car car = new Car("", "", "WH 12", "", "Tamsel", "Dory", "2014", "km", "", "", 0);
        return books.write(change -> {
            String id = ((Saved.Done<Car>) new Cars(books).save(change, car))
                    .value()
                    .id();
            Arrival arrival = new Arrival("knocks", "", "", "", Heights.NONE, "");
            return new Jobs(books).open(change, id, arrival, "", "Mara").id();
        });
    }

    /** One that does things, keeps what it did until the server said that it has it, and follows the others. */
    private final class Device {
        final String job;
        final List<Event> done = new ArrayList<>();
        final Set<String> acknowledged = new HashSet<>();
        final List<KeptEvent> seen = new ArrayList<>();
        final Random random;
        volatile int followed;

        Device(String job, String name, long seed) {
            this.job = job;
            random = new Random(seed);
            Instant clock = Instant.parse("2026-03-02T09:00:00Z").plusSeconds(random.nextInt(200_000) - 100_000);
            for (int seq = 1; seq <= EACH; seq++) {
                clock = clock.plusSeconds(random.nextInt(10) == 0 ? -random.nextInt(5_000) : random.nextInt(60));
                Did did = DIDS.get(random.nextInt(DIDS.size()));
                done.add(Doing.at(clock, name, seq, did, "joint-" + random.nextInt(12)));
            }
        }

        void work() {
            for (int i = 0; acknowledged.size() < EACH; i++) {
                assertThat(i).as("rounds").isLessThan(20_000);
                List<Event> batch = batch();
                if (random.nextInt(5) > 0) {
                    Received answer = send(batch);
                    if (random.nextInt(4) > 0) {
                        take((Received.Kept) answer);
                    }
                }
                if (random.nextInt(3) == 0) {
                    follow();
                }
            }
            follow();
        }

        /** Some that are not acknowledged, often not the first, with some that are, shuffled. */
        private List<Event> batch() {
            List<Event> batch = new ArrayList<>();
            int from = acknowledged.size() < EACH / 2 ? random.nextInt(8) : 0;
            for (Event event : done) {
                boolean known = acknowledged.contains(event.id());
                if (!known && from-- <= 0 && batch.size() < 25) {
                    batch.add(event);
                }
                if (known && random.nextInt(300) == 0) {
                    batch.add(event);
                }
            }
            if (!batch.isEmpty() && random.nextBoolean()) {
                batch.add(batch.get(random.nextInt(batch.size())));
            }
            Collections.shuffle(batch, random);
            return batch;
        }

        private Received send(List<Event> batch) {
            running.readLock().lock();
            try {
                return events.append(job, batch);
            } finally {
                running.readLock().unlock();
            }
        }

        private void take(Received.Kept kept) {
            assertThat(kept.merged().refused()).isEmpty();
            Set<String> waiting = new HashSet<>();
            kept.merged().waiting().forEach(event -> waiting.add(event.id()));
            kept.merged().appended().forEach(event -> acknowledged.add(event.id()));
            kept.merged().known().stream()
                    .filter(event -> !waiting.contains(event.id()))
                    .forEach(event -> acknowledged.add(event.id()));
        }

        private void follow() {
            running.readLock().lock();
            try {
                seen.addAll(events.since(job, seen.size()));
                followed = seen.size();
            } finally {
                running.readLock().unlock();
            }
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 20_260_302})
    void everyEvent_isThereOnce_andAllSeeTheSame(long seed) throws Exception {
        start();
        String job = job();
        List<Device> devices = List.of(
                new Device(job, "tab", seed), new Device(job, "phone", seed + 1), new Device(job, "pad", -seed));
        ExecutorService hands = Executors.newFixedThreadPool(3);
        try {
            List<Future<?>> all = new ArrayList<>();
            devices.forEach(device -> all.add(hands.submit(device::work)));
            for (int i = 0; i < 8; i++) {
                int due = i * EACH / 4;
                while (devices.get(0).followed < due && !all.get(0).isDone()) {
                    Thread.onSpinWait();
                }
                startAgain();
            }
            for (Future<?> one : all) {
                one.get();
            }
        } finally {
            hands.shutdownNow();
        }
        check(job, devices, "seed " + seed);
        database.close();
    }

    private void check(String job, List<Device> devices, String seed) {
        List<Event> kept = events.all(job);
        assertThat(kept).as(seed).hasSize(3 * EACH);
        for (Device device : devices) {
            assertThat(kept.stream().filter(device.done::contains)).as(seed).containsExactlyElementsOf(device.done);
        }
        assertThat(events.verifyChain(job)).as(seed).isInstanceOf(Verdict.Whole.class);
        Standing standing = standing(kept);
        for (Device device : devices) {
            device.follow();
            List<Event> theirs = new ArrayList<>();
            device.seen.forEach(one -> theirs.add(Events.read(job, one)));
            assertThat(standing(theirs).joints()).as(seed).isEqualTo(standing.joints());
            assertThat(standing(theirs).owing()).as(seed).isEqualTo(standing.owing());
        }
    }

    private static Standing standing(List<Event> events) {
        return Standing.of(Promised.of(List.of(), List.of(), Set.of(), Map.of()), events);
    }
}

package putback.benchmarks;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.atomic.AtomicLong;
import putback.ledger.Did;
import putback.ledger.Event;
import putback.ledger.Signature;
import putback.store.books.Arrival;
import putback.store.books.Books;
import putback.store.books.Car;
import putback.store.books.Cars;
import putback.store.books.Events;
import putback.store.books.Heights;
import putback.store.books.Jobs;
import putback.store.books.Saved;
import putback.store.database.SqliteDatabase;

/**
 * How many events a second are acknowledged, each on disk before its answer, beside bare JDBC that inserts one row a commit
 * with the same settings (WAL, synchronous FULL) in the same run. A device waits for its answer before it sends the next.
 */
public final class EventCommits {
    private static final long ROUND_MS = 2000;
    private static final int ROUNDS = 5;
    private static final int EACH_JOB = 150;

    private EventCommits() {}

    /** Does one thing for a device and waits until it is on disk. */
    private interface Work {
        void one(int device, long number) throws SQLException;
    }

    public static void main(String[] arguments) throws Exception {
        Path folder = Files.createTempDirectory(Path.of(arguments.length > 0 ? arguments[0] : "."), "commits");
        System.out.println("devices, ours a second, bare a second, ratio (medians of " + ROUNDS + ")");
        try (SqliteDatabase database = SqliteDatabase.open(folder.resolve("ours.db"));
                Connection bare = bare(folder.resolve("bare.db"))) {
            Books books = new Books(database, "g1", Clock.systemUTC());
            Work ours = ours(books);
            Work plain = plain(bare);
            for (int devices : new int[] {1, 4, 16}) {
                compare(devices, ours, plain);
            }
        } finally {
            delete(folder);
        }
    }

    private static void compare(int devices, Work ours, Work plain) throws InterruptedException {
        double[] first = new double[ROUNDS];
        double[] second = new double[ROUNDS];
        double[] ratios = new double[ROUNDS];
        rate(devices, ours);
        rate(devices, plain);
        for (int i = 0; i < ROUNDS; i++) {
            first[i] = rate(devices, ours);
            second[i] = rate(devices, plain);
            ratios[i] = first[i] / second[i];
        }
        System.out.printf(
                Locale.ROOT, "%d, %.0f, %.0f, %.2f%n", devices, median(first), median(second), median(ratios));
    }

    private static double median(double[] values) {
        Arrays.sort(values);
        return values[values.length / 2];
    }

    private static double rate(int devices, Work work) throws InterruptedException {
        AtomicLong done = new AtomicLong();
        long end = System.nanoTime() + ROUND_MS * 1_000_000;
        List<Thread> threads = new ArrayList<>();
        for (int device = 0; device < devices; device++) {
            int mine = device;
            Thread thread = new Thread(() -> {
                try {
                    while (System.nanoTime() < end) {
                        work.one(mine, done.incrementAndGet());
                    }
                } catch (SQLException failure) {
                    throw new IllegalStateException(failure);
                }
            });
            threads.add(thread);
            thread.start();
        }
        for (Thread thread : threads) {
            thread.join();
        }
        return done.get() * 1000.0 / ROUND_MS;
    }

    /** Each device works at a job of its own, and begins another after as many events as a job has. */
    private static Work ours(Books books) {
        Events events = new Events(books);
        String[] jobs = new String[64];
        int[] numbers = new int[64];
        return (device, number) -> {
            if (numbers[device]++ % EACH_JOB == 0) {
                jobs[device] = job(books);
                numbers[device] = 1;
            }
            Signature signature = new Signature(
                    "d" + device + "-" + numbers[device],
                    Instant.EPOCH.plusSeconds(number),
                    "Mara",
                    "d" + device,
                    (long) numbers[device]);
            Event event = new Event(
                    signature,
                    Did.UNDO,
                    "left.strut",
                    null,
                    List.of(),
                    null,
                    null,
                    null,
                    null,
                    null,
                    null,
                    null,
                    null,
                    null);
            events.append(jobs[device], List.of(event));
        };
    }

    private static String job(Books books) {
        Car car = new Car("", "", "WH 12", "", "Tamsel", "Dory", "2014", "km", "", "", 0);
        return books.write(change -> {
            Saved<Car> saved = new Cars(books).save(change, car);
            String id = ((Saved.Done<Car>) saved).value().id();
            return new Jobs(books)
                    .open(change, id, new Arrival("knocks", "", "", "", Heights.NONE, ""), "", "Mara")
                    .id();
        });
    }

    private static Connection bare(Path file) throws SQLException {
        Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
        try (Statement statement = connection.createStatement()) {
            statement.execute("pragma journal_mode = wal");
            statement.execute("pragma synchronous = full");
            statement.execute("create table event (job text not null, number integer not null, id text not null,"
                    + " device text not null, seq integer not null, body text not null, hash text not null,"
                    + " received_at text not null, primary key (job, number))");
            statement.execute("create unique index event_by_id on event (job, id)");
        }
        connection.setAutoCommit(false);
        return connection;
    }

    private static Work plain(Connection connection) throws SQLException {
        PreparedStatement insert = connection.prepareStatement("insert into event values (?, ?, ?, ?, ?, ?, ?, ?)");
        AtomicLong rows = new AtomicLong();
        String body = "{\"id\":\"d1-1\",\"at\":\"2026-03-02T09:00:00Z\",\"by\":\"Mara\",\"device\":\"d1\",\"seq\":1,"
                + "\"do\":\"undo\",\"joint\":\"left.strut\"}";
        return (device, number) -> {
            synchronized (connection) {
                long row = rows.incrementAndGet();
                insert.setString(1, "job-" + device);
                insert.setLong(2, row);
                insert.setString(3, "d" + device + "-" + row);
                insert.setString(4, "d" + device);
                insert.setLong(5, row);
                insert.setString(6, body);
                insert.setString(7, "0123456789abcdef0123456789abcdef0123456789abcdef0123456789abcdef");
                insert.setString(8, "2026-03-02T09:00:00.000Z");
                insert.executeUpdate();
                connection.commit();
            }
        };
    }

    private static void delete(Path folder) throws IOException {
        try (var files = Files.list(folder)) {
            for (Path file : files.toList()) {
                Files.delete(file);
            }
        }
        Files.delete(folder);
    }
}

package putback.benchmarks;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import putback.store.backup.BackingUp;
import putback.store.backup.BackupFault;
import putback.store.backup.BackupFile;
import putback.store.backup.Restoring;
import putback.store.books.Books;
import putback.store.books.Cars;
import putback.store.books.Jobs;
import putback.store.database.Database;
import putback.store.database.SqliteDatabase;
import putback.store.photos.PhotoFiles;

/** What one file of books holds and how fast: rows, bytes, commits beside bare JDBC, searches, backup. See docs/scale.md. */
public final class BooksScale {
    private static final int CARS = 2000;
    private static final int JOBS = 10_000;
    private static final int COMMITS = 2000;
    private static final int ROUNDS = 3;
    private static final String INSERT = "insert into setting (garage, name, value) values ('g', ?, ?)";
    private static final String VALUE = "v".repeat(300);

    private final Path folder;

    private BooksScale(Path folder) {
        this.folder = folder;
    }

    /** Prints its figures; the folder given must be on the disk that is asked about. */
    public static void main(String[] words) throws Exception {
        Path folder = Files.createTempDirectory(Path.of(words.length > 0 ? words[0] : "."), "scale");
        try {
            new BooksScale(folder).run();
        } finally {
            delete(folder);
        }
    }

    private static void delete(Path folder) throws IOException {
        try (var files = Files.walk(folder)) {
            for (Path file : files.sorted(java.util.Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        }
    }

    private static void say(String what, double value, String unit) {
        System.out.printf(Locale.ROOT, "%-46s %12.1f %s%n", what, value, unit);
    }

    private void run() throws Exception {
        Path file = folder.resolve("garage.db");
        try (Database database = SqliteDatabase.open(file)) {
            Books books = GarageInFull.books(database);
            long start = System.nanoTime();
            new GarageInFull(books).fill(CARS, JOBS);
            say("filling", seconds(start), "s");
            counts(database);
            reading(books);
        }
        say("file", Files.size(file) / 1e6, "MB");
        opening(file);
        backup(file);
        for (int round = 0; round < ROUNDS; round++) {
            say("commits a second, bare JDBC, one thread", bare(round), "1/s");
            say("commits a second, books, one thread", ours(round, 1), "1/s");
            say("commits a second, books, 8 threads", ours(round + ROUNDS, 8), "1/s");
        }
    }

    private static double seconds(long start) {
        return (System.nanoTime() - start) / 1e9;
    }

    private static void counts(Database database) {
        for (String table : List.of("customer", "car", "job", "job_move", "approval", "part_line", "event")) {
            long rows = database.<Long>read(handle -> handle.createQuery("select count(*) from " + table)
                    .mapTo(Long.class)
                    .one());
            say("rows of " + table, (double) rows, "");
        }
    }

    private static void reading(Books books) {
        say(
                "search of cars, median",
                median(() -> new Cars(books).search("wh 1234", 20).size()),
                "ms");
        say(
                "search of jobs, median",
                median(() -> new Jobs(books).search("knocks bumps", 20).size()),
                "ms");
        say(
                "search that finds nothing, median",
                median(() -> new Jobs(books).search("zzz", 20).size()),
                "ms");
    }

    private static double median(Callable<Integer> work) {
        double[] times = new double[31];
        for (int i = 0; i < times.length; i++) {
            long start = System.nanoTime();
            try {
                if (work.call() < 0) {
                    throw new IllegalStateException("never");
                }
            } catch (Exception failure) {
                throw new IllegalStateException(failure);
            }
            times[i] = (System.nanoTime() - start) / 1e6;
        }
        Arrays.sort(times);
        return times[times.length / 2];
    }

    private static void opening(Path file) {
        long start = System.nanoTime();
        try (Database database = SqliteDatabase.open(file)) {
            say("opening", seconds(start) * 1000, "ms");
            start = System.nanoTime();
            if (!database.soundness().whole()) {
                throw new IllegalStateException("the books are broken");
            }
            say("looking over all of it", seconds(start), "s");
        }
    }

    private void backup(Path file) throws IOException, BackupFault {
        Path to = folder.resolve("garage.backup");
        PhotoFiles photos = new PhotoFiles(folder.resolve("photos"));
        long start = System.nanoTime();
        try (Database database = SqliteDatabase.open(file)) {
            BackingUp.write(database, photos, "2026-03-02T12:00:00.000Z", to);
        }
        say("backup", seconds(start), "s");
        say("backup's file", Files.size(to) / 1e6, "MB");
        start = System.nanoTime();
        try (BackupFile backup = BackupFile.open(to)) {
            new Restoring(backup, photos).to(folder.resolve("restored.db").toString(), false, "2026-03-02");
        }
        say("restore", seconds(start), "s");
    }

    private Path fresh(String name) {
        Path file = folder.resolve(name + ".db");
        SqliteDatabase.open(file).close();
        return file;
    }

    private double bare(int round) throws SQLException {
        Path file = fresh("bare" + round);
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
                Statement pragmas = connection.createStatement()) {
            pragmas.execute("pragma journal_mode = wal");
            pragmas.execute("pragma synchronous = full");
            pragmas.execute("pragma foreign_keys = on");
            try (PreparedStatement insert = connection.prepareStatement(INSERT)) {
                long start = System.nanoTime();
                for (int i = 0; i < COMMITS; i++) {
                    insert.setString(1, "row" + i);
                    insert.setString(2, VALUE);
                    insert.executeUpdate();
                }
                return COMMITS / seconds(start);
            }
        }
    }

    private double ours(int round, int threads) throws Exception {
        try (Database database = SqliteDatabase.open(fresh("ours" + round))) {
            ExecutorService hands = Executors.newFixedThreadPool(threads);
            long start = System.nanoTime();
            List<Callable<Integer>> all = new java.util.ArrayList<>();
            for (int t = 0; t < threads; t++) {
                int hand = t;
                all.add(() -> writeAll(database, "hand" + hand + "-", COMMITS / threads));
            }
            for (Future<Integer> one : hands.invokeAll(all)) {
                one.get();
            }
            double rate = COMMITS / seconds(start);
            hands.shutdown();
            return rate;
        }
    }

    private static int writeAll(Database database, String word, int count) {
        for (int i = 0; i < count; i++) {
            String name = word + i;
            database.write(change -> change.handle().execute(INSERT, name, VALUE));
        }
        return count;
    }
}

package putback.store.durability;

import java.io.FileOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.sql.Statement;
import putback.store.database.Database;
import putback.store.database.SqliteDatabase;
import putback.store.database.StoreFailure;

/**
 * A program of its own that writes rows and says of each that it is kept: to its output, and into the file {@code acknowledged} beside the
 * books, so that a record of the disk shows what had been said by when.
 */
final class Acknowledging {
    private static final String INSERT = "insert into setting (garage, name, value) values ('g', ?, ?)";

    private Acknowledging() {}

    /** Called with: how, the file of books, a word before each name, how many rows, how long a row's value is. */
    public static void main(String[] words) throws Exception {
        Path file = Path.of(words[1]);
        int count = Integer.parseInt(words[3]);
        String value = "v".repeat(Integer.parseInt(words[4]));
        switch (words[0]) {
            case "books" -> books(file, words[2], count, value);
            case "without-syncing" -> withoutSyncing(file, words[2], count, value);
            case "troubled" -> troubled(file, Path.of(words[2]));
            default -> throw new IllegalArgumentException(words[0]);
        }
    }

    private static void books(Path file, String word, int count, String value) throws IOException {
        try (Database database = SqliteDatabase.open(file);
                OutputStream beside = beside(file)) {
            for (int i = 0; i < count; i++) {
                String name = word + i;
                database.write(change -> change.handle().execute(INSERT, name, value));
                say(beside, name);
            }
        }
    }

    /** What a careless program would do; by it one sees that lost rows are found. */
    private static void withoutSyncing(Path file, String word, int count, String value)
            throws SQLException, IOException {
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
                Statement statement = connection.createStatement();
                OutputStream beside = beside(file)) {
            statement.execute("pragma synchronous = off");
            for (int i = 0; i < count; i++) {
                try (PreparedStatement insert = connection.prepareStatement(INSERT)) {
                    insert.setString(1, word + i);
                    insert.setString(2, value);
                    insert.executeUpdate();
                }
                say(beside, word + i);
            }
        }
    }

    private static OutputStream beside(Path file) throws IOException {
        return new FileOutputStream(file.resolveSibling("acknowledged").toFile(), true);
    }

    private static void say(OutputStream beside, String name) throws IOException {
        byte[] line = (name + "\n").getBytes(StandardCharsets.UTF_8);
        beside.write(line);
        System.out.write(line);
        System.out.flush();
    }

    /** Writes while the disk is full, then broken, and again when it is well. */
    private static void troubled(Path file, Path says) throws IOException {
        try (Database database = SqliteDatabase.open(file)) {
            attempt(database, "before");
            for (String trouble : new String[] {"full", "broken"}) {
                Path sign = Files.createFile(says.resolve(trouble));
                attempt(database, "while-" + trouble);
                Files.delete(sign);
                attempt(database, "after-" + trouble);
            }
        }
        Files.createFile(says.resolve("read-only"));
        try (Database database = SqliteDatabase.open(file)) {
            attempt(database, "while-read-only");
        } catch (StoreFailure failure) {
            System.out.println("while-read-only: " + failure.getMessage());
        }
    }

    private static void attempt(Database database, String name) {
        try {
            database.write(change -> change.handle().execute(INSERT, name, "v".repeat(9000)));
            System.out.println(name + ": kept");
        } catch (StoreFailure failure) {
            System.out.println(name + ": " + failure.getMessage());
        }
    }
}

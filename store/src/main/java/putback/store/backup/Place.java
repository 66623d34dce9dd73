package putback.store.backup;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import org.jspecify.annotations.Nullable;
import putback.store.database.Folders;

/** Where a file of books is going to lie, and what lies there now. */
final class Place implements AutoCloseable {
    private static final List<String> COMPANIONS = List.of("-wal", "-shm", "-journal");
    private static final int BUSY = 5;

    private final Path file;
    private final Path beside;
    private final String day;

    private Place(Path file, Path beside, String day) {
        this.file = file;
        this.beside = beside;
        this.day = day;
    }

    static Place take(Path file, boolean over, String day) throws IOException, BackupFault {
        if (Files.exists(file) && !over) {
            throw new BackupFault(
                    file + ": there are books already. Restore into another folder with --data, or use --over:"
                            + " then the books that are there are kept beside the new ones.");
        }
        if (Files.exists(file) && !Files.isRegularFile(file)) {
            throw new BackupFault(file + " is not a file. Name another with --database.");
        }
        if (Files.exists(file)) {
            closeForGood(file);
        }
        Path folder = file.resolveSibling(".").normalize();
        Folders.make(folder);
        return new Place(file, Files.createTempFile(folder, "." + file.getFileName(), ".restoring"), day);
    }

    /** A new file that nobody looks at yet. */
    Path beside() {
        return beside;
    }

    /** Puts the new file in its place. Returns where the old one lies now. */
    @Nullable
    String swap() throws IOException, BackupFault {
        try (FileChannel channel = FileChannel.open(beside, StandardOpenOption.WRITE)) {
            channel.force(true);
        }
        String old = null;
        if (Files.exists(file)) {
            closeForGood(file);
            old = putAside().toString();
        }
        Files.move(beside, file, StandardCopyOption.ATOMIC_MOVE);
        Folders.sync(file.resolveSibling("."));
        return old;
    }

    private Path putAside() throws IOException {
        Path aside = named(file, ".before-" + day);
        for (int i = 2; Files.exists(aside); i++) {
            aside = named(file, ".before-" + day + "-" + i);
        }
        Files.move(file, aside, StandardCopyOption.ATOMIC_MOVE);
        for (String companion : COMPANIONS) {
            if (Files.exists(named(file, companion))) {
                Files.move(named(file, companion), named(aside, companion), StandardCopyOption.ATOMIC_MOVE);
            }
        }
        return aside;
    }

    /**
     * Folds the log into the file. That is possible only while no other program has the file open, so it says too when one has. A file too
     * damaged for it is put aside with its log.
     */
    private static void closeForGood(Path file) throws BackupFault {
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
                Statement statement = connection.createStatement()) {
            statement.execute("pragma journal_mode = delete");
        } catch (SQLException failure) {
            if ((failure.getErrorCode() & 0xff) == BUSY) {
                throw new BackupFault(file + ": another program has these books open. Stop it first, maybe"
                        + " putback serve; nothing was touched.");
            }
        }
    }

    private void discard() throws IOException {
        Files.deleteIfExists(beside);
        for (String companion : COMPANIONS) {
            Files.deleteIfExists(named(beside, companion));
        }
    }

    private static Path named(Path file, String ending) {
        return file.resolveSibling(file.getFileName() + ending);
    }

    @Override
    public void close() throws IOException {
        discard();
    }
}

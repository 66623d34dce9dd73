package putback.store.backup;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import putback.store.database.Database;
import putback.store.database.Folders;
import putback.store.database.Schema;
import putback.store.photos.PhotoFiles;

/** Copies all books, as they are at one moment, and their photos into one file, while others go on working. */
public final class BackingUp {
    private final Database database;
    private final PhotoFiles photos;
    private final String at;
    private long rows;
    private int kept;
    private final List<String> missing = new ArrayList<>();

    private BackingUp(Database database, PhotoFiles photos, String at) {
        this.database = database;
        this.photos = photos;
        this.at = at;
    }

    /**
     * Writes the backup. It is there whole or not at all, and only ever takes the place of another backup.
     *
     * @param at the time that it says it was taken
     * @throws BackupFault for a file that cannot be written
     */
    public static Written write(Database database, PhotoFiles photos, String at, Path file) throws BackupFault {
        check(file);
        Path place = file.toAbsolutePath();
        try {
            // Its name is its own, since another backup may be under way; and only its owner may read it.
            Path beside = Files.createTempFile(place.resolveSibling("."), "." + place.getFileName(), ".part");
            try {
                Written written = new BackingUp(database, photos, at).writeTo(beside);
                Files.move(beside, place, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
                Folders.sync(place.resolveSibling("."));
                return written;
            } finally {
                discard(beside);
            }
        } catch (IOException failure) {
            throw new BackupFault(file + ": the backup cannot be written: " + why(failure) + ".");
        }
    }

    private static void check(Path file) throws BackupFault {
        if (Files.isDirectory(file)) {
            throw new BackupFault(file + " is a folder. Give the name of a file in it, such as garage.backup.");
        }
        if (Files.exists(file) && !BackupFile.isOne(file)) {
            throw new BackupFault(
                    file + " is there and is no backup of Putback's, so it is not written over. Give another name.");
        }
        Path folder = file.toAbsolutePath().getParent();
        if (folder == null || !Files.isDirectory(folder)) {
            throw new BackupFault(file + ": there is no folder " + folder + ". Make it first.");
        }
    }

    private static void discard(Path beside) {
        try {
            Files.deleteIfExists(beside);
        } catch (IOException stays) {
            // What could not be written could not be removed either; the first fault is told.
        }
    }

    static String why(IOException failure) {
        String said = String.valueOf(failure.getMessage());
        if (said.contains("No space left")) {
            return "the disk is full; make room, or name a file elsewhere";
        }
        return failure instanceof java.nio.file.AccessDeniedException ? "its folder may not be written to" : said;
    }

    private Written writeTo(Path file) throws IOException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
            OutputStream stream =
                    new BufferedOutputStream(java.nio.channels.Channels.newOutputStream(channel), 1 << 16);
            Archive archive = new Archive(stream);
            archive.text(Names.HEAD, new Head(Head.FORMAT, database.schema(), at).text());
            for (String hash : books(archive)) {
                photo(archive, hash);
            }
            archive.finish();
            stream.flush();
            channel.force(true);
        }
        return new Written(rows, kept, missing);
    }

    /** Returns the hashes of the photos that the books name. */
    private List<String> books(Archive archive) throws IOException {
        try {
            return database.read(handle -> {
                try {
                    return tables(handle, archive);
                } catch (IOException failure) {
                    throw new java.io.UncheckedIOException(failure);
                }
            });
        } catch (java.io.UncheckedIOException failure) {
            throw failure.getCause();
        }
    }

    private List<String> tables(Handle handle, Archive archive) throws IOException {
        List<String> tables = Schema.tables(handle);
        for (String table : tables) {
            archive.entry(Names.table(table), stream -> rows += Rows.write(handle, table, stream));
        }
        return tables.contains("photo")
                ? handle.createQuery("select distinct hash from photo order by hash")
                        .mapTo(String.class)
                        .list()
                : List.of();
    }

    private void photo(Archive archive, String hash) throws IOException {
        Optional<byte[]> file = photos.read(hash);
        String wrong = photos.wrong(hash);
        if (file.isEmpty() || !wrong.isEmpty()) {
            missing.add(wrong);
            return;
        }
        byte[] bytes = file.orElseThrow();
        archive.entry(Names.photo(hash), stream -> stream.write(bytes));
        kept++;
    }
}

package putback.store.backup;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;
import putback.store.database.Change;
import putback.store.database.Database;
import putback.store.database.Databases;
import putback.store.database.Schema;
import putback.store.database.Soundness;
import putback.store.photos.PhotoFiles;

/** Puts a backup in its place: into a new file, or into a server's empty database. */
public final class Restoring {
    private final BackupFile backup;
    private final PhotoFiles photos;

    /** From a backup that was found whole. */
    public Restoring(BackupFile backup, PhotoFiles photos) {
        this.backup = backup;
        this.photos = photos;
    }

    /**
     * Restores. Nothing is touched until all of it has been read; books that lie there are kept beside the new ones.
     *
     * @param over whether there may be books in the file already
     * @param day part of the old file's new name
     * @throws BackupFault says what is in the way
     */
    public Restored to(String where, boolean over, String day) throws BackupFault {
        int schema = backup.head().schema();
        if (schema < 1 || schema > Databases.newestSchema()) {
            throw new BackupFault("This backup is of books at schema " + schema
                    + ", but this program knows only up to " + Databases.newestSchema()
                    + ". It was written by a newer Putback; restore it with that one.");
        }
        try {
            if (Databases.isServer(where)) {
                if (over) {
                    throw new BackupFault("--over is for files. Maybe create an empty database on the server and name"
                            + " that one: a server's books are never put aside.");
                }
                return counted(load(where), null);
            }
            return intoFile(Databases.file(where).toAbsolutePath(), over, day);
        } catch (IOException failure) {
            throw new BackupFault(
                    Databases.shown(where) + ": cannot be restored there: " + BackingUp.why(failure) + ".");
        }
    }

    private Restored intoFile(Path place, boolean over, String day) throws IOException, BackupFault {
        try (Place books = Place.take(place, over, day)) {
            long rows = load(books.beside().toString());
            int count = photos();
            return new Restored(rows, count, books.swap());
        }
    }

    private Restored counted(long rows, @Nullable String old) throws IOException {
        return new Restored(rows, photos(), old);
    }

    private long load(String where) throws BackupFault, IOException {
        long rows;
        try (Database database = Databases.fresh(where, backup.head().schema())) {
            if (database.schema() != backup.head().schema() || isUsed(database)) {
                throw new BackupFault(database.where() + ": there are books already. Name an empty database.");
            }
            rows = database.write(this::tables);
        } catch (UncheckedIOException failure) {
            throw failure.getCause();
        }
        try (Database database = Databases.open(where)) {
            Soundness soundness = database.soundness();
            if (!soundness.whole()) {
                throw new BackupFault("The books in this backup are not whole: "
                        + soundness.faults().get(0) + ".");
            }
        }
        return rows;
    }

    private static boolean isUsed(Database database) {
        return database.read(handle -> {
            List<String> tables = Schema.tables(handle);
            return tables.stream().anyMatch(table -> handle.createQuery("select 1 from " + table + " limit 1")
                    .mapTo(Integer.class)
                    .findFirst()
                    .isPresent());
        });
    }

    private long tables(Change change) {
        long rows = 0;
        for (String name : backup.names()) {
            if (Names.isTable(name)) {
                try (InputStream stream = backup.stream(name)) {
                    rows += Loading.read(change.handle(), Names.tableOf(name), stream);
                } catch (IOException failure) {
                    throw new UncheckedIOException(failure);
                }
            }
        }
        return rows;
    }

    private int photos() throws IOException {
        int count = 0;
        for (String name : backup.names()) {
            if (Names.isPhoto(name)) {
                try (InputStream stream = backup.stream(name)) {
                    photos.keep(stream.readAllBytes());
                }
                count++;
            }
        }
        return count;
    }
}

package putback.store.backup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicBoolean;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import putback.store.books.Books;
import putback.store.books.Customers;
import putback.store.database.Database;
import putback.store.database.Databases;
import putback.store.photos.PhotoFiles;

/** What backups promise, whichever database the books lie in. */
abstract class BackupContract {
    static final String AT = "2026-03-02T12:00:00.000Z";

    @TempDir
    Path folder;

    /** An address where there are no books yet. */
    abstract String fresh();

    private Path photos(String name) {
        return folder.resolve(name);
    }

    private Written backUp(String where, String photos, Path file) throws BackupFault {
        try (Database database = Databases.look(where)) {
            return BackingUp.write(database, new PhotoFiles(photos(photos)), AT, file);
        }
    }

    private Restored restore(Path file, String where, String photos) throws BackupFault {
        try (BackupFile backup = BackupFile.open(file)) {
            return new Restoring(backup, new PhotoFiles(photos(photos))).to(where, false, "2026-03-02");
        }
    }

    private String filled() {
        String where = fresh();
        try (Database database = Databases.open(where)) {
            FullBooks.fill(database, photos("photos"));
        }
        return where;
    }

    @Test
    void whatIsRestored_makesTheSameBackupAgain() throws Exception {
        String where = filled();
        Path file = folder.resolve("one.backup");
        Written written = backUp(where, "photos", file);
        assertThat(written.missing()).isEmpty();
        assertThat(written.photos()).isEqualTo(1);
        String other = fresh();
        Restored restored = restore(file, other, "others");
        assertThat(restored).isEqualTo(new Restored(written.rows(), 1, null));
        Path again = folder.resolve("again.backup");
        backUp(other, "others", again);
        assertThat(Files.readAllBytes(again)).isEqualTo(Files.readAllBytes(file));
        try (Database database = Databases.open(other)) {
            Customers customers = new Customers(new Books(database, "g1", FullBooks.NOON));
            assertThat(customers.search("zoe", 5)).singleElement().satisfies(customer -> assertThat(customer.name())
                    .isEqualTo(FullBooks.AWKWARD));
        }
    }

    @Test
    void booksAtAnOlderSchema_areBackedUpAsTheyAre_andBroughtUpWhenRestored() throws Exception {
        String where = fresh();
        try (Database database = Databases.fresh(where, 1)) {
            FullBooks.fill(database, photos("photos"));
            assertThat(database.schema()).isEqualTo(1);
        }
        Path file = folder.resolve("old.backup");
        backUp(where, "photos", file);
        try (Database database = Databases.look(where)) {
            assertThat(database.schema()).as("looking changes nothing").isEqualTo(1);
        }
        String other = fresh();
        restore(file, other, "others");
        try (Database database = Databases.look(other)) {
            assertThat(database.schema()).isEqualTo(Databases.newestSchema());
            assertThatThrownBy(() -> database.write(change -> change.handle().execute("delete from approval")))
                    .hasMessageContaining("rows are only added");
        }
    }

    @Test
    void booksThatAreThere_areNotRestoredOver() throws Exception {
        String where = filled();
        Path file = folder.resolve("one.backup");
        backUp(where, "photos", file);
        assertThatThrownBy(() -> restore(file, where, "photos"))
                .isInstanceOf(BackupFault.class)
                .hasMessageContaining("there are books already");
    }

    @Test
    void aBackupTakenWhileOthersWrite_isOfOneMoment() throws Exception {
        String where = filled();
        AtomicBoolean going = new AtomicBoolean(true);
        CountDownLatch begun = new CountDownLatch(20);
        try (Database database = Databases.open(where)) {
            Thread writer = new Thread(() -> writePairs(database, going, begun));
            writer.start();
            begun.await();
            for (int i = 0; i < 3; i++) {
                backUp(where, "photos", folder.resolve("busy" + i + ".backup"));
            }
            going.set(false);
            writer.join();
        }
        for (int i = 0; i < 3; i++) {
            String other = fresh();
            restore(folder.resolve("busy" + i + ".backup"), other, "others");
            try (Database database = Databases.open(other)) {
                assertThat(count(database, "left"))
                        .isEqualTo(count(database, "right"))
                        .isGreaterThan(10);
            }
        }
    }

    private static int count(Database database, String garage) {
        return database.read(handle -> handle.createQuery("select count(*) from setting where garage = ?")
                .bind(0, garage)
                .mapTo(Integer.class)
                .one());
    }

    private static void writePairs(Database database, AtomicBoolean going, CountDownLatch begun) {
        for (int i = 0; going.get(); i++) {
            String name = "pair " + i;
            database.write(change -> {
                change.handle().execute("insert into setting (garage, name, value) values ('left', ?, '')", name);
                return change.handle()
                        .execute("insert into setting (garage, name, value) values ('right', ?, '')", name);
            });
            begun.countDown();
        }
    }

    @Test
    void aPhotoThatIsGone_isNamedAndTheRestIsKept() throws Exception {
        String where = fresh();
        try (Database database = Databases.open(where)) {
            String hash = FullBooks.fill(database, photos("photos"));
            Files.delete(new PhotoFiles(photos("photos")).path(hash));
        }
        Written written = backUp(where, "photos", folder.resolve("one.backup"));
        assertThat(written.missing()).singleElement().asString().contains("is not there");
        List<String> entries = new ArrayList<>();
        try (BackupFile backup = BackupFile.open(folder.resolve("one.backup"))) {
            backup.names().forEach(entries::add);
        }
        assertThat(entries).contains("books/job.jsonl", "books/photo.jsonl").noneMatch(Names::isPhoto);
    }
}

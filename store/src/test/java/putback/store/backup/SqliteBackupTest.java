package putback.store.backup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import putback.store.database.Database;
import putback.store.database.Databases;
import putback.store.photos.PhotoFiles;

class SqliteBackupTest extends BackupContract {
    private int count;

    @Override
    String fresh() {
        return folder.resolve("books" + count++).resolve("garage.db").toString();
    }

    private Path backup() throws BackupFault {
        try (Database database = Databases.open(fresh())) {
            FullBooks.fill(database, folder.resolve("photos"));
            Path file = folder.resolve("good.backup");
            BackingUp.write(database, new PhotoFiles(folder.resolve("photos")), AT, file);
            return file;
        }
    }

    private static void restore(Path file, Path where, boolean over) throws BackupFault {
        try (BackupFile backup = BackupFile.open(file)) {
            new Restoring(backup, new PhotoFiles(where.resolve("photos")))
                    .to(where.resolve("garage.db").toString(), over, "2026-03-02");
        }
    }

    @Test
    void aBackupThatIsCutOff_isRefusedWhereverItEnds() throws Exception {
        byte[] whole = Files.readAllBytes(backup());
        Path file = folder.resolve("cut.backup");
        Path target = folder.resolve("target");
        for (int length = 0; length < whole.length; length += 1 + whole.length / 150) {
            Files.write(file, Arrays.copyOf(whole, length));
            assertThatThrownBy(() -> restore(file, target, false))
                    .as(length + " of " + whole.length + " bytes")
                    .isInstanceOf(BackupFault.class)
                    .message()
                    .containsAnyOf("is damaged", "is no backup");
        }
        assertThat(target).doesNotExist();
    }

    @Test
    void aBackupWithAlteredBytes_isRefusedOrTheSame() throws Exception {
        byte[] whole = Files.readAllBytes(backup());
        Path file = folder.resolve("altered.backup");
        int refused = 0;
        for (int seed = 0; seed < 400; seed++) {
            Random random = new Random(seed);
            byte[] altered = whole.clone();
            altered[random.nextInt(altered.length)] ^= (byte) (1 << random.nextInt(8));
            Files.write(file, altered);
            try (BackupFile backup = BackupFile.open(file)) {
                // What stands between the entries, such as dates, is not read; the entries themselves are what was
                // written.
                assertThat(backup.head().at()).as("seed " + seed).isEqualTo(AT);
            } catch (BackupFault fault) {
                refused++;
            }
        }
        assertThat(refused).isGreaterThan(200);
    }

    @Test
    void whatIsNoBackup_isRefusedAndNeverWrittenOver() throws Exception {
        Path file = Files.writeString(folder.resolve("letter.txt"), "Dear Orla", StandardCharsets.UTF_8);
        Path target = folder.resolve("target");
        assertThatThrownBy(() -> restore(file, target, false)).hasMessageContaining("is no backup that Putback wrote");
        assertThatThrownBy(() -> restore(folder.resolve("none"), target, false))
                .hasMessageContaining("there is no such file");
        try (Database database = Databases.open(fresh())) {
            PhotoFiles photos = new PhotoFiles(folder.resolve("photos"));
            assertThatThrownBy(() -> BackingUp.write(database, photos, AT, file))
                    .hasMessageContaining("is no backup of Putback's");
            assertThatThrownBy(() -> BackingUp.write(database, photos, AT, folder))
                    .hasMessageContaining("is a folder");
            assertThatThrownBy(() -> BackingUp.write(database, photos, AT, folder.resolve("no/where")))
                    .hasMessageContaining("there is no folder");
        }
        assertThat(file).hasContent("Dear Orla");
        assertThat(target).doesNotExist();
    }

    @Test
    void aBackupOfANewerProgram_isRefused() throws Exception {
        Path file = folder.resolve("newer.backup");
        for (Head head : new Head[] {new Head(1, 99, AT), new Head(2, 2, AT)}) {
            try (Archive archive = new Archive(Files.newOutputStream(file))) {
                archive.text(Names.HEAD, head.text());
                archive.finish();
            }
            assertThatThrownBy(() -> restore(file, folder.resolve("target"), false))
                    .hasMessageContaining("newer Putback");
        }
    }

    @Test
    void aNewBackup_takesThePlaceOfAnOlderOne_andIsForItsOwnersEyes() throws Exception {
        Path file = backup();
        Files.write(file, Arrays.copyOf(Files.readAllBytes(file), 100));
        backup();
        try (BackupFile backup = BackupFile.open(file)) {
            assertThat(backup.head().schema()).isEqualTo(Databases.newestSchema());
        }
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file)))
                .isEqualTo("rw-------");
        try (Stream<Path> left = Files.list(folder)) {
            assertThat(left.map(Path::toString)).noneMatch(name -> name.endsWith(".part"));
        }
    }

    @Test
    void over_keepsTheOldBooksBesideTheNewOnes() throws Exception {
        Path file = backup();
        Path where = folder.resolve("mine");
        for (int i = 0; i < 2; i++) {
            try (Database database = Databases.open(where.resolve("garage.db").toString())) {
                database.write(change -> change.handle()
                        .execute("insert into setting (garage, name, value) values ('g', 'mine', 'yes')"));
            }
            restore(file, where, true);
        }
        for (String old : new String[] {"garage.db.before-2026-03-02", "garage.db.before-2026-03-02-2"}) {
            try (Database database = Databases.look(where.resolve(old).toString())) {
                assertThat(database.<List<String>>read(
                                handle -> handle.createQuery("select value from setting where name = 'mine'")
                                        .mapTo(String.class)
                                        .list()))
                        .containsExactly("yes");
            }
        }
    }

    @Test
    void over_isRefusedWhileTheBooksAreOpen() throws Exception {
        Path file = backup();
        Path where = folder.resolve("mine");
        Path books = where.resolve("garage.db");
        try (Database open = Databases.open(books.toString())) {
            assertThatThrownBy(() -> restore(file, where, true)).hasMessageContaining("has these books open");
            open.write(change ->
                    change.handle().execute("insert into setting (garage, name, value) values ('g', 'still', 'here')"));
        }
        assertThat(names(where)).containsExactly("garage.db");
    }

    @Test
    void over_putsADamagedFileAside() throws Exception {
        Path file = backup();
        Path where = Files.createDirectory(folder.resolve("mine"));
        Files.writeString(where.resolve("garage.db"), "nothing but rubble ".repeat(100), StandardCharsets.UTF_8);
        restore(file, where, true);
        assertThat(names(where)).containsExactly("garage.db", "garage.db.before-2026-03-02", "photos");
        try (Database database = Databases.look(where.resolve("garage.db").toString())) {
            assertThat(database.soundness().faults()).isEmpty();
        }
    }

    private static String[] names(Path where) throws IOException {
        try (Stream<Path> files = Files.list(where)) {
            return files.map(path -> path.getFileName().toString()).sorted().toArray(String[]::new);
        }
    }
}

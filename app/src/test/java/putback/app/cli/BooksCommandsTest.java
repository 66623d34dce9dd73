package putback.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import putback.store.database.Database;
import putback.store.database.Databases;
import putback.store.photos.PhotoFiles;

/** Backup, restore and verify as they are typed. */
class BooksCommandsTest {
    @TempDir
    private Path folder;

    private String data(String name) {
        return folder.resolve(name).toString();
    }

    /** Books with a photo; returns its hash. */
    private String books(String name) {
        try (Database database =
                Databases.open(folder.resolve(name).resolve("garage.db").toString())) {
            String hash = new PhotoFiles(folder.resolve(name).resolve("photos")).keep(new byte[] {1, 2, 3});
            database.write(change -> {
                change.handle().execute("insert into car (id, garage) values ('c', 'g')");
                change.handle()
                        .execute("insert into job (id, garage, number, car, stage, opened_at)"
                                + " values ('j', 'g', '2026-0007', 'c', 'asked', '2026-03-02T12:00:00.000Z')");
                return change.handle()
                        .execute(
                                "insert into photo (id, job, hash, type, bytes, at, by_name) values"
                                        + " ('p', 'j', ?, 'image/png', 3, '2026-03-02T12:00:00.000Z', 'Teo')",
                                hash);
            });
            return hash;
        }
    }

    @Test
    void backup_restore_verify_goRoundOnce() {
        books("mine");
        String file = data("garage.backup");
        Said backup = Said.by("backup", file, "--data", data("mine"));
        assertThat(backup.out()).contains("3 rows and 1 photos");
        assertThat(backup.exit()).isEqualTo(Exit.DONE);
        Said restore = Said.by("restore", file, "--data", data("other"));
        assertThat(restore.err()).isEmpty();
        assertThat(restore.out()).contains("3 rows and 1 photos, as they were at 20");
        Said verify = Said.by("verify", "--data", data("other"));
        assertThat(verify.exit()).isEqualTo(Exit.DONE);
        assertThat(verify.out()).contains("schema ", "books: whole", "photos: whole");
    }

    @Test
    void verify_namesThePhotoThatWasAltered() throws IOException {
        String hash = books("mine");
        Path photo = new PhotoFiles(folder.resolve("mine").resolve("photos")).path(hash);
        Files.write(photo, new byte[] {1, 2, 4});
        Said verify = Said.by("verify", "--data", data("mine"));
        assertThat(verify.exit()).isEqualTo(Exit.FAILED);
        assertThat(verify.err()).contains("photo of job 2026-0007", photo + " is not what was kept");
        Files.delete(photo);
        assertThat(Said.by("verify", "--data", data("mine")).err()).contains("is not there");
        Said backup = Said.by("backup", data("b"), "--data", data("mine"));
        assertThat(backup.exit()).isEqualTo(Exit.FAILED);
        assertThat(backup.err()).contains("a photo is not in the backup");
    }

    @Test
    void verify_namesARowThatLeadsNowhere() throws SQLException {
        books("mine");
        String file = folder.resolve("mine").resolve("garage.db").toString();
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
                Statement statement = connection.createStatement()) {
            statement.execute("update job set car = 'nowhere'");
        }
        Said verify = Said.by("verify", "--data", data("mine"));
        assertThat(verify.exit()).isEqualTo(Exit.FAILED);
        assertThat(verify.err()).contains("row 1 of job names a row of car that is not there");
    }

    @Test
    void whereThereAreNoBooks_noneAreMade() {
        for (String command : List.of("verify", "backup")) {
            Said said = command.equals("backup")
                    ? Said.by(command, data("b"), "--data", data("none"))
                    : Said.by(command, "--data", data("none"));
            assertThat(said.exit()).isEqualTo(Exit.FAILED);
            assertThat(said.err()).contains("there are no books here");
        }
        assertThat(folder.resolve("none")).doesNotExist();
        assertThat(folder.resolve("b")).doesNotExist();
    }

    @Test
    void restore_refusesWhatIsThere_unlessToldToKeepItBeside() {
        books("mine");
        String file = data("garage.backup");
        Said.by("backup", file, "--data", data("mine"));
        Said refused = Said.by("restore", file, "--data", data("mine"));
        assertThat(refused.exit()).isEqualTo(Exit.FAILED);
        assertThat(refused.err()).contains("there are books already", "--over");
        Said over = Said.by("restore", file, "--data", data("mine"), "--over");
        assertThat(over.out()).contains("The books that were there are now", "garage.db.before-20");
    }

    @Test
    void aForeignFile_isRefusedInWords() throws IOException {
        Path letter = Files.writeString(folder.resolve("letter"), "Dear Orla", StandardCharsets.UTF_8);
        books("mine");
        assertThat(Said.by("restore", letter.toString(), "--data", data("other"))
                        .err())
                .contains("is no backup that Putback wrote");
        assertThat(Said.by("backup", letter.toString(), "--data", data("mine")).err())
                .contains("is not written over");
        assertThat(Said.by("verify", "--database", letter.toString()).err()).contains("not a file of books");
        assertThat(letter).hasContent("Dear Orla");
    }

    @Test
    void aServerThatDoesNotAnswer_isToldWithoutItsPassword() {
        Said said = Said.by("verify", "--database", "postgresql://127.0.0.1:1/books?user=a&password=secret");
        assertThat(said.exit()).isEqualTo(Exit.FAILED);
        assertThat(said.err()).contains("the server does not answer").doesNotContain("secret");
    }

    @Test
    void booksLie_whereSuchDataBelongs() throws UsageFault {
        Arguments none = new Arguments(List.of(), Map.of());
        assertThat(BooksPlace.of("serve", none, Map.of("XDG_DATA_HOME", "/srv/data"), "/home/mara"))
                .isEqualTo(new BooksPlace(Path.of("/srv/data/putback"), "/srv/data/putback/garage.db", "garage"));
        assertThat(BooksPlace.of("serve", none, Map.of("XDG_DATA_HOME", "data"), "/home/mara")
                        .folder())
                .isEqualTo(Path.of("/home/mara/.local/share/putback"));
        Arguments both = new Arguments(
                List.of(), Map.of("--data", List.of("/d"), "--database", List.of("postgresql://host/books")));
        assertThat(BooksPlace.of("serve", both, Map.of(), "/home/mara"))
                .isEqualTo(new BooksPlace(Path.of("/d"), "postgresql://host/books", "garage"));
    }
}

package putback.store.durability;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.Statement;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import putback.store.database.Database;
import putback.store.database.Databases;
import putback.store.database.SqliteDatabase;
import putback.store.database.StoreFailure;

/** What is said when the disk or the file is not as it should be, and that nothing acknowledged is lost by it. */
class TroubledDiskTest {
    @TempDir
    private Path folder;

    @Test
    @Tag("long")
    void aFullABrokenAndAReadOnlyDisk_areToldAndLoseNothing() throws Exception {
        Path disk = Files.createDirectory(folder.resolve("disk"));
        Path says = Files.createDirectory(folder.resolve("says"));
        Path file = disk.resolve("garage.db");
        SqliteDatabase.open(file).close();
        DiskShim shim = DiskShim.compile(folder);
        List<String> said = Child.start(shim.saying(disk, says), "troubled", file.toString(), says.toString(), "0", "0")
                .end();
        assertThat(said).hasSize(6);
        assertThat(said.get(0)).isEqualTo("before: kept");
        assertThat(said.get(1)).contains("the disk is full", "Nothing was written", "make room");
        assertThat(said.get(2)).isEqualTo("after-full: kept");
        assertThat(said.get(3)).contains("the disk answers with a fault", "look at the disk");
        assertThat(said.get(4)).isEqualTo("after-broken: kept");
        assertThat(said.get(5)).contains("may only be read", "give this user the right to write");
        assertThat(Acknowledged.kept(file, "afterwards"))
                .contains("before", "after-full", "after-broken")
                .doesNotContain("while-full", "while-read-only");
    }

    private Path filled() {
        Path file = folder.resolve("garage.db");
        try (Database database = SqliteDatabase.open(file)) {
            for (int i = 0; i < 50; i++) {
                String name = "row " + i;
                database.write(change -> change.handle()
                        .execute(
                                "insert into setting (garage, name, value) values ('g', ?, ?)",
                                name,
                                "v".repeat(3000)));
            }
        }
        return file;
    }

    @Test
    void aFileThatIsCutOff_isCalledDamaged() throws Exception {
        Path file = filled();
        byte[] whole = Files.readAllBytes(file);
        for (int part = 2; part < 8; part++) {
            Files.write(file, Arrays.copyOf(whole, whole.length * part / 8));
            assertThat(faults(file)).as(part + "/8").isNotEmpty();
        }
    }

    private static List<String> faults(Path file) {
        try (Database database = SqliteDatabase.open(file)) {
            return database.soundness().faults();
        } catch (StoreFailure failure) {
            assertThat(failure)
                    .hasMessageContaining("the file is damaged")
                    .hasMessageContaining("restore the last backup");
            return List.of(String.valueOf(failure.getMessage()));
        }
    }

    @Test
    void aFileThatIsNoDatabase_isRefusedAndLeftAlone() throws Exception {
        Path file = Files.writeString(folder.resolve("garage.db"), "Dear diary, ".repeat(400), StandardCharsets.UTF_8);
        byte[] before = Files.readAllBytes(file);
        assertThatThrownBy(() -> SqliteDatabase.open(file))
                .isInstanceOf(StoreFailure.class)
                .hasMessageContaining("this is not a file of books");
        assertThat(Files.readAllBytes(file)).isEqualTo(before);
    }

    @Test
    void aDatabaseOfSomeoneElse_isRefused() throws Exception {
        Path file = folder.resolve("recipes.db");
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
                Statement statement = connection.createStatement()) {
            statement.execute("create table recipe (name text)");
        }
        assertThatThrownBy(() -> SqliteDatabase.open(file)).hasMessageContaining("these are not Putback's books");
        assertThatThrownBy(() -> Databases.look(file.toString())).hasMessageContaining("these are not Putback's books");
    }

    @Test
    void booksOfANewerProgram_areRefused() throws Exception {
        Path file = filled();
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
                Statement statement = connection.createStatement()) {
            statement.execute("update schema_history set version = '99' where installed_rank ="
                    + " (select max(installed_rank) from schema_history)");
        }
        assertThatThrownBy(() -> SqliteDatabase.open(file))
                .isInstanceOf(StoreFailure.class)
                .hasMessageContaining("schema 99")
                .hasMessageContaining("newer Putback");
    }

    @Test
    void aFolderInTheWay_isTold() throws Exception {
        Path file = Files.createDirectory(folder.resolve("garage.db"));
        assertThatThrownBy(() -> SqliteDatabase.open(file))
                .isInstanceOf(StoreFailure.class)
                .hasMessageContaining("cannot be opened");
        assertThatThrownBy(() -> Databases.look(folder.resolve("none.db").toString()))
                .hasMessageContaining("there are no books here");
        assertThat(folder.resolve("none.db")).doesNotExist();
    }
}

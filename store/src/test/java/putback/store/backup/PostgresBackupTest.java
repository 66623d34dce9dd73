package putback.store.backup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import putback.store.database.Database;
import putback.store.database.Databases;
import putback.store.database.PostgresServer;
import putback.store.photos.PhotoFiles;

@Tag("long")
class PostgresBackupTest extends BackupContract {
    @Override
    String fresh() {
        return PostgresServer.freshDatabase();
    }

    private void move(String from, String to, Path file) throws BackupFault {
        PhotoFiles photos = new PhotoFiles(folder.resolve("photos"));
        try (Database database = Databases.open(from)) {
            BackingUp.write(database, photos, AT, file);
        }
        try (BackupFile backup = BackupFile.open(file)) {
            new Restoring(backup, photos).to(to, false, "2026-03-02");
        }
    }

    @Test
    void booksMove_fromAFileToAServerAndBack_unaltered() throws Exception {
        String file = folder.resolve("garage.db").toString();
        try (Database database = Databases.open(file)) {
            FullBooks.fill(database, folder.resolve("photos"));
        }
        String server = fresh();
        move(file, server, folder.resolve("there"));
        move(server, folder.resolve("back.db").toString(), folder.resolve("back"));
        assertThat(Files.readAllBytes(folder.resolve("back"))).isEqualTo(Files.readAllBytes(folder.resolve("there")));
    }

    @Test
    void over_isNotForServers() throws Exception {
        Path file = folder.resolve("one.backup");
        PhotoFiles photos = new PhotoFiles(folder.resolve("photos"));
        try (Database database = Databases.open(fresh())) {
            BackingUp.write(database, photos, AT, file);
        }
        try (BackupFile backup = BackupFile.open(file)) {
            assertThatThrownBy(() -> new Restoring(backup, photos).to(fresh(), true, "2026-03-02"))
                    .hasMessageContaining("--over is for files");
        }
    }
}

package putback.store.books;

import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;
import putback.store.database.Database;
import putback.store.database.SqliteDatabase;

class SqliteTaughtTest extends TaughtContract {
    @TempDir
    private Path folder;

    @Override
    Database open() {
        return SqliteDatabase.open(folder.resolve("garage.db"));
    }
}

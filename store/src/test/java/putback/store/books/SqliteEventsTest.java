package putback.store.books;

import java.nio.file.Path;
import java.time.Clock;
import org.junit.jupiter.api.io.TempDir;
import putback.store.database.Database;
import putback.store.database.SqliteDatabase;

class SqliteEventsTest extends EventsContract {
    @TempDir
    private Path folder;

    @Override
    Database open() {
        return SqliteDatabase.open(folder.resolve("garage.db"));
    }

    @Override
    void unlock(Database database) {
        new Books(database, "g1", Clock.systemUTC()).write(change -> {
            change.handle().execute("drop trigger event_no_update");
            return change.handle().execute("drop trigger event_no_delete");
        });
    }
}

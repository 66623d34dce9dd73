package putback.store.books;

import java.time.Clock;
import org.junit.jupiter.api.Tag;
import putback.store.database.Database;
import putback.store.database.PostgresDatabase;
import putback.store.database.PostgresServer;

@Tag("long")
class PostgresEventsTest extends EventsContract {
    @Override
    Database open() {
        return PostgresDatabase.open(PostgresServer.freshDatabase());
    }

    @Override
    void unlock(Database database) {
        new Books(database, "g1", Clock.systemUTC())
                .write(change -> change.handle().execute("drop trigger event_only_added_to on event"));
    }
}

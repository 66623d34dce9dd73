package putback.store.books;

import org.junit.jupiter.api.Tag;
import putback.store.database.Database;
import putback.store.database.PostgresDatabase;
import putback.store.database.PostgresServer;

@Tag("long")
class PostgresTaughtTest extends TaughtContract {
    @Override
    Database open() {
        return PostgresDatabase.open(PostgresServer.freshDatabase());
    }
}

package putback.app.web;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.extension.RegisterExtension;
import putback.store.database.PostgresDatabase;
import putback.store.database.PostgresServer;

@Tag("browser")
class PostgresJobPageTest extends JobCourse {
    @RegisterExtension
    private static final Screens SCREENS = new Screens(() -> PostgresDatabase.open(PostgresServer.freshDatabase()));

    @Override
    Screens screens() {
        return SCREENS;
    }
}

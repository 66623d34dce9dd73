package putback.app.web;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.extension.RegisterExtension;
import putback.store.database.Database;
import putback.store.database.SqliteDatabase;

@Tag("browser")
class SqliteJobPageTest extends JobCourse {
    @RegisterExtension
    private static final Screens SCREENS = new Screens(SqliteJobPageTest::fresh);

    private static Database fresh() {
        try {
            return SqliteDatabase.open(Files.createTempDirectory("putback").resolve("garage.db"));
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    @Override
    Screens screens() {
        return SCREENS;
    }
}

package putback.store.books;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.Statement;
import java.time.Clock;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import putback.ledger.Event;
import putback.store.database.Database;
import putback.store.database.SqliteDatabase;
import putback.store.inspection.Inspection;
import putback.store.inspection.Inspections;
import putback.store.photos.PhotoFiles;
import putback.store.sheets.EventLines;
import putback.store.sheets.EventsRead;

class BrokenLedgerTest {
    @TempDir
    private Path folder;

    @Test
    void anEventAlteredInTheFile_isNamedAsTheFirstLinkThatDoesNotHold() throws Exception {
        Path file = folder.resolve("garage.db");
        try (Database database = SqliteDatabase.open(file)) {
            Books books = new Books(database, "g1", Clock.systemUTC());
            Car car = new Car("", "", "WH 1", "", "", "", "", "km", "", "", 0);
            String id = books.write(change -> ((Saved.Done<Car>) new Cars(books).save(change, car))
                    .value()
                    .id());
            Arrival arrival = new Arrival("knocks", "", "", "", Heights.NONE, "");
            Job job = books.write(change -> new Jobs(books).open(change, id, arrival, "", "Mara"));
            StringBuilder lines = new StringBuilder();
            for (int i = 1; i <= 4; i++) {
                lines.append("{\"id\":\"e")
                        .append(i)
                        .append("\",\"at\":\"2026-11-02T12:00:0")
                        .append(i)
                        .append("Z\",\"by\":\"Mara\",\"device\":\"d\",\"seq\":")
                        .append(i)
                        .append(",\"do\":\"undo\",\"joint\":\"j")
                        .append(i)
                        .append("\"}\n");
            }
            List<Event> events = ((EventsRead.Sound) EventLines.read("events", lines.toString())).events();
            new Events(books).append(job.id(), events);
            assertThat(faults(database)).isEmpty();
        }
        try (Connection raw = DriverManager.getConnection("jdbc:sqlite:" + file);
                Statement statement = raw.createStatement()) {
            statement.execute("drop trigger event_no_update");
            statement.execute("update event set body = replace(body, 'j3', 'j9') where number = 3");
        }
        try (Database database = SqliteDatabase.open(file)) {
            assertThat(faults(database)).singleElement().asString().contains("from event 3 on");
        }
    }

    private List<String> faults(Database database) {
        for (Inspection inspection : Inspections.all(new PhotoFiles(folder.resolve("photos")))) {
            if (inspection.about().equals("ledgers")) {
                return inspection.faults(database);
            }
        }
        throw new IllegalStateException("nobody looks at the ledgers");
    }
}

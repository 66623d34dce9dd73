package putback.store.inspection;

import java.util.List;
import putback.store.database.Database;

/** Whether the database itself is whole, and whether its rows belong together. */
final class BooksInspection implements Inspection {
    @Override
    public String about() {
        return "books";
    }

    @Override
    public List<String> faults(Database database) {
        return database.soundness().faults();
    }
}

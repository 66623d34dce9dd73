package putback.store.inspection;

import java.util.List;
import putback.store.database.Database;

/** One look over the books. */
public interface Inspection {
    /** What is looked at, such as "photos". */
    String about();

    /**
     * What is broken, in words, the first first; empty for nothing. It changes nothing.
     *
     * @param database as it was found, maybe at an older schema
     */
    List<String> faults(Database database);
}

package putback.store.durability;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Collection;
import java.util.HashSet;
import java.util.Set;
import putback.store.database.Database;
import putback.store.database.SqliteDatabase;

/** Opens books after a mishap. */
final class Acknowledged {
    private Acknowledged() {}

    /** The names of all rows; the books must be whole. */
    static Set<String> kept(Path file, String when) {
        try (Database database = SqliteDatabase.open(file)) {
            assertThat(database.soundness().faults()).as(when).isEmpty();
            return new HashSet<>(database.read(handle -> handle.createQuery("select name from setting")
                    .mapTo(String.class)
                    .list()));
        }
    }

    static void areAllThere(Collection<String> acknowledged, Path file, String when) {
        assertThat(kept(file, when)).as(when).containsAll(acknowledged);
    }
}

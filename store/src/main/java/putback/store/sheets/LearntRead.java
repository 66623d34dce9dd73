package putback.store.sheets;

import java.util.List;
import putback.labour.price.Observed;

/** What came of reading what a garage has seen: all of it, or everything that is wrong with the file. */
public sealed interface LearntRead {
    record Sound(List<Observed> seen) implements LearntRead {
        public Sound {
            seen = List.copyOf(seen);
        }
    }

    /**
     * @param faults at least one, sorted by line and column
     */
    record Faulty(List<Fault> faults) implements LearntRead {
        public Faulty {
            faults = List.copyOf(faults);
        }
    }
}

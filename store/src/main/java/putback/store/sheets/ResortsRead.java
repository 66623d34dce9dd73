package putback.store.sheets;

import java.util.List;
import putback.labour.seized.Seized;

/** What came of reading a file of resorts: the question it asks, or everything that is wrong with it. */
public sealed interface ResortsRead {
    record Sound(Seized seized) implements ResortsRead {}

    /**
     * @param faults at least one, sorted by line and column
     */
    record Faulty(List<Fault> faults) implements ResortsRead {
        public Faulty {
            faults = List.copyOf(faults);
        }
    }
}

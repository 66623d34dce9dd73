package putback.store.sheets;

import java.util.List;
import putback.labour.price.PlaceProfile;

/** What came of reading what a place asks of an estimate: a profile, or everything that is wrong with the file. */
public sealed interface PlaceRead {
    record Sound(PlaceProfile profile) implements PlaceRead {}

    /**
     * @param faults at least one, sorted by line and column
     */
    record Faulty(List<Fault> faults) implements PlaceRead {
        public Faulty {
            faults = List.copyOf(faults);
        }
    }
}

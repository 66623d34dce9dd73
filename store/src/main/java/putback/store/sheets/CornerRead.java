package putback.store.sheets;

import java.util.List;
import putback.angles.linkage.Corner;

/** What came of reading a suspension: the corner it describes, or everything that is wrong with it. */
public sealed interface CornerRead {
    record Sound(Corner corner) implements CornerRead {}

    /**
     * @param faults at least one, sorted by line and column
     */
    record Faulty(List<Fault> faults) implements CornerRead {
        public Faulty {
            faults = List.copyOf(faults);
        }
    }
}

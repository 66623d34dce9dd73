package putback.store.sheets;

import java.util.List;
import putback.angles.adjusting.AngleJob;

/** What came of reading a file of wheel angles: the job, or everything that is wrong with it. */
public sealed interface AnglesRead {
    record Sound(AngleJob job) implements AnglesRead {}

    /**
     * @param faults at least one, sorted by line and column
     */
    record Faulty(List<Fault> faults) implements AnglesRead {
        public Faulty {
            faults = List.copyOf(faults);
        }
    }
}

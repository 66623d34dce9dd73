package putback.store.sheets;

import java.util.List;
import putback.angles.bounce.Trace;

/** What came of reading a recorded bounce: the trace, or everything that is wrong with it. */
public sealed interface TraceRead {
    record Sound(Trace trace) implements TraceRead {}

    /**
     * @param faults at least one, sorted by line and column
     */
    record Faulty(List<Fault> faults) implements TraceRead {
        public Faulty {
            faults = List.copyOf(faults);
        }
    }
}

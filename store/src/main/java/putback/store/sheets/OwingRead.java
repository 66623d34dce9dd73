package putback.store.sheets;

import java.util.List;
import putback.ledger.Event;
import putback.ledger.Promised;

/** What came of reading a plan and its events: what is to be compared, or everything that is wrong with the files. */
public sealed interface OwingRead {
    record Sound(Promised promised, List<Event> events) implements OwingRead {
        public Sound {
            events = List.copyOf(events);
        }
    }

    /**
     * @param faults at least one, sorted by file, line and column
     */
    record Faulty(List<Fault> faults) implements OwingRead {
        public Faulty {
            faults = List.copyOf(faults);
        }
    }
}

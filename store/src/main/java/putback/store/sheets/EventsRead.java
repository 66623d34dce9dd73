package putback.store.sheets;

import java.util.List;
import putback.ledger.Event;

/** What came of reading lines of events. */
public sealed interface EventsRead {
    record Sound(List<Event> events) implements EventsRead {
        public Sound {
            events = List.copyOf(events);
        }
    }

    /**
     * @param faults at least one, sorted by line and column
     */
    record Faulty(List<Fault> faults) implements EventsRead {
        public Faulty {
            faults = List.copyOf(faults);
        }
    }
}

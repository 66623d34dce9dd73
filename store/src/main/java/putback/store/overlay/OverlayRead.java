package putback.store.overlay;

import java.util.List;
import putback.store.sheets.Fault;

/** What came of reading a car's own sheet as data. */
public sealed interface OverlayRead {
    record Sound(Overlay overlay) implements OverlayRead {}

    /**
     * @param faults at least one, sorted by line and column
     */
    record Faulty(List<Fault> faults) implements OverlayRead {
        public Faulty {
            faults = List.copyOf(faults);
        }
    }
}

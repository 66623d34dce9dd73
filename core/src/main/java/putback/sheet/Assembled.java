package putback.sheet;

import java.util.List;

/** A car, or what keeps the sheet from describing one. */
public sealed interface Assembled {
    record Sound(Assembly assembly) implements Assembled {}

    /**
     * @param faults at least one, in the order of the sheet
     */
    record Faulty(List<SheetFault> faults) implements Assembled {
        public Faulty {
            faults = List.copyOf(faults);
        }
    }
}

package putback.store.sheets;

import java.util.List;
import putback.sheet.Assembly;

/** What came of reading a sheet: a car to plan on, or everything that is wrong with the sheet. */
public sealed interface Read {
    /**
     * @param assembly both sides stood up, every reference resolved
     * @param name the file as the user named it, or the id of the stock sheet
     */
    record Sheet(Assembly assembly, String name) implements Read {}

    /**
     * @param faults at least one, sorted by file, line and column
     */
    record Faulty(List<Fault> faults) implements Read {
        public Faulty {
            faults = List.copyOf(faults);
        }
    }
}

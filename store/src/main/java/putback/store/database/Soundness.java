package putback.store.database;

import java.util.List;

/**
 * What an examination of a database found.
 *
 * @param faults in words; empty when it is whole
 */
public record Soundness(List<String> faults) {
    public Soundness {
        faults = List.copyOf(faults);
    }

    /** Whether nothing was found. */
    public boolean whole() {
        return faults.isEmpty();
    }
}

package putback.store.sheets;

import java.util.Map;
import java.util.TreeMap;

/**
 * Where the things of a sheet are described, so that advice can name lines.
 *
 * @param parts by id with side, as in the assembly
 * @param joints by id with side, as in the assembly
 * @param units by id with side, as in the assembly
 * @param followUps by id
 */
public record Places(
        Map<String, Place> parts, Map<String, Place> joints, Map<String, Place> units, Map<String, Place> followUps) {
    public Places {
        parts = java.util.Collections.unmodifiableMap(new TreeMap<>(parts));
        joints = java.util.Collections.unmodifiableMap(new TreeMap<>(joints));
        units = java.util.Collections.unmodifiableMap(new TreeMap<>(units));
        followUps = java.util.Collections.unmodifiableMap(new TreeMap<>(followUps));
    }
}

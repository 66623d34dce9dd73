package putback.store.overlay;

import java.util.List;
import putback.store.sheets.Piece;
import putback.store.sheets.Piece.Entries;

/** Lays what is said later over what was said before, as a sheet is laid over its base; what removes stays. */
final class Laying {
    private static final List<String> REPLACED_WHOLE = List.of("hold", "torque");
    /** What was said of the old torque and does not hold for a new one. */
    private static final List<String> SAID_OF_TORQUE = List.of("source", "window");

    private Laying() {}

    static Entries section(Entries below, Entries over) {
        Entries merged = below;
        for (String id : over.byKey().keySet()) {
            Piece value = over.get(id);
            if (value != null) {
                boolean both = merged.get(id) instanceof Entries && value instanceof Entries;
                merged = merged.with(
                        id, both && merged.get(id) instanceof Entries there ? entry(there, (Entries) value) : value);
            }
        }
        return merged;
    }

    private static Entries entry(Entries below, Entries over) {
        Entries merged = below;
        if (over.get("torque") != null) {
            for (String key : SAID_OF_TORQUE) {
                merged = merged.without(key);
            }
        }
        for (String key : over.byKey().keySet()) {
            Piece value = over.get(key);
            if (value instanceof Entries more && merged.get(key) instanceof Entries there && !whole(key)) {
                merged = merged.with(key, entry(there, more));
            } else if (value != null) {
                merged = merged.with(key, value);
            }
        }
        return merged;
    }

    private static boolean whole(String key) {
        return REPLACED_WHOLE.contains(key);
    }
}

package putback.store.sheets;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import putback.sheet.Side;
import putback.store.sheets.Node.Entries;
import putback.store.sheets.Node.Entry;

/**
 * Lays one map over another: by id and key by key. Single values and lists are replaced, maps are merged; nothing
 * ({@code null}) removes what was there.
 */
final class Merger {
    /** Maps that say one thing as a whole, so that half of an old one never survives under a new one. */
    private static final List<String> REPLACED_WHOLE = List.of("hold", "torque");
    /** What was said of the old torque and does not hold for a new one. */
    private static final List<String> SAID_OF_TORQUE = List.of("source", "window");

    private final Faults faults;
    private final Removals removals;

    Merger(Faults faults) {
        this(faults, new Removals());
    }

    /**
     * @param removals takes down what is removed
     */
    Merger(Faults faults, Removals removals) {
        this.faults = faults;
        this.removals = removals;
    }

    /** A whole sheet over another. Entries for one side keep what they take back until they meet their plain entry. */
    Entries sheets(Entries below, Entries over) {
        Map<String, Entry> merged = new LinkedHashMap<>(below.byKey());
        for (Entry entry : over.byKey().values()) {
            String key = entry.key().text();
            if (Keys.SECTIONS.contains(key) && entry.value() instanceof Entries section) {
                Entries base = below.get(key) instanceof Entries there ? there : Entries.none(section.place());
                merged.put(key, new Entry(entry.key(), section(key, base, section)));
            } else {
                put(merged, entry, false);
            }
        }
        return new Entries(over.place(), merged);
    }

    private Entries section(String name, Entries below, Entries over) {
        Map<String, Entry> merged = new LinkedHashMap<>(below.byKey());
        for (Entry entry : over.byKey().values()) {
            String id = entry.key().text();
            boolean sided = Ids.sideOf(id) != Side.NONE;
            if (Node.isNothing(entry.value())) {
                removals.add(name, id, entry.key().place());
            }
            if (sided && Node.isNothing(entry.value())) {
                merged.put(id, taking(entry, merged.get(id)));
            } else if (Node.isNothing(entry.value())) {
                removeAll(merged, entry);
            } else if (sided) {
                putSided(merged, entry);
            } else {
                put(merged, entry, false);
            }
        }
        return new Entries(over.place(), merged);
    }

    private void removeAll(Map<String, Entry> merged, Entry entry) {
        String id = entry.key().text();
        boolean removed = merged.remove(id) != null;
        for (Side side : List.of(Side.LEFT, Side.RIGHT)) {
            removed |= merged.remove(side.prefix() + id) != null;
        }
        if (!removed) {
            faults.add(
                    entry.place(),
                    id + " has nothing after it, which removes what a base describes, and no base"
                            + " describes it; for one with nothing special write " + id + ": {}");
        }
    }

    private void putSided(Map<String, Entry> merged, Entry entry) {
        Entry there = merged.get(entry.key().text());
        boolean both = there != null && there.value() instanceof Entries && entry.value() instanceof Entries;
        Node value =
                both && there != null ? entries((Entries) there.value(), (Entries) entry.value(), true) : entry.value();
        merged.put(entry.key().text(), new Entry(entry.key(), value));
    }

    /** One entry over another: {@code left.cap} over {@code cap}. */
    Entries entries(Entries below, Entries over) {
        return entries(below, over, false);
    }

    /**
     * @param keeps whether what removes stays, to remove from an entry that comes later
     */
    private Entries entries(Entries below, Entries over, boolean keeps) {
        Map<String, Entry> merged = new LinkedHashMap<>(below.byKey());
        if (over.byKey().containsKey("torque")) {
            merged.keySet().removeAll(SAID_OF_TORQUE);
        }
        for (Entry entry : over.byKey().values()) {
            put(merged, entry, keeps);
        }
        return new Entries(over.place(), merged);
    }

    private void put(Map<String, Entry> merged, Entry entry, boolean keeps) {
        String key = entry.key().text();
        Entry there = merged.get(key);
        if (keeps && Node.isNothing(entry.value())) {
            merged.put(key, taking(entry, there));
        } else if (Node.isNothing(entry.value())) {
            if (merged.remove(key) == null && !(entry.value() instanceof Node.Taken)) {
                faults.add(entry.place(), key + " has nothing after it; leave the key out, or say what it is");
            }
        } else if (entry.value() instanceof Entries over) {
            boolean merges = there != null && there.value() instanceof Entries && !REPLACED_WHOLE.contains(key);
            Entries below = merges && there != null ? (Entries) there.value() : Entries.none(over.place());
            merged.put(key, new Entry(entry.key(), entries(below, over, keeps)));
        } else {
            merged.put(key, entry);
        }
    }

    /** The entry itself, or, where it took something away already, one that remembers it. */
    private static Entry taking(Entry entry, @Nullable Entry there) {
        boolean took = there != null && (there.value() instanceof Node.Taken || !Node.isNothing(there.value()));
        return took ? new Entry(entry.key(), new Node.Taken(entry.place())) : entry;
    }
}

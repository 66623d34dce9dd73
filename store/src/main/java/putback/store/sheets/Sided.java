package putback.store.sheets;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import putback.sheet.Side;
import putback.sheet.Where;
import putback.store.sheets.Node.Entries;
import putback.store.sheets.Node.Entry;

/**
 * An entry of a section as it counts on its side.
 *
 * @param key as a fault's path names it: with its side where it differs by side
 * @param id without side
 * @param at its id in the file
 */
record Sided(String key, String id, Where where, Entries values, Place at) {

    /**
     * Unfolds a section: each plain entry once, or once a side where an entry for one side lies over it.
     *
     * @param parts whether these are parts, which alone may be shared by both sides
     */
    static List<Sided> of(Entries section, boolean sides, boolean parts, Faults faults) {
        Set<String> ids = new TreeSet<>();
        List<Sided> unfolded = new ArrayList<>();
        Unfolding unfolding = new Unfolding(section, sides, parts, faults);
        for (String key : section.byKey().keySet()) {
            if (ids.add(Ids.plain(key))) {
                unfolded.addAll(unfolding.of(Ids.plain(key)));
            }
        }
        return unfolded;
    }

    private record Unfolding(Entries section, boolean sides, boolean parts, Faults faults) {
        List<Sided> of(String id) {
            Entry plain = section.byKey().get(id);
            Map<Side, Entry> bySide = new LinkedHashMap<>();
            for (Side side : List.of(Side.LEFT, Side.RIGHT)) {
                Entry entry = section.byKey().get(side.prefix() + id);
                if (entry != null && mayDiffer(entry, plain)) {
                    bySide.put(side, entry);
                }
            }
            if (bySide.isEmpty()) {
                return plain == null ? List.of() : List.of(plainly(id, plain));
            }
            List<Sided> unfolded = new ArrayList<>();
            for (Side side : List.of(Side.LEFT, Side.RIGHT)) {
                Sided one = onSide(id, side, plain, bySide.get(side));
                if (one != null) {
                    unfolded.add(one);
                }
            }
            return unfolded;
        }

        private Sided plainly(String id, Entry plain) {
            Entries values = values(plain);
            Where where = sides && !isShared(values) ? Where.EACH_SIDE : Where.ONCE;
            return new Sided(id, id, where, values, plain.key().place());
        }

        private @Nullable Sided onSide(String id, Side side, @Nullable Entry plain, @Nullable Entry sided) {
            Entry key = sided != null ? sided : plain;
            if (key == null || (sided != null && Node.isNothing(sided.value()))) {
                return null;
            }
            Entries below = plain == null ? Entries.none(key.value().place()) : values(plain);
            Entries values = sided == null ? below : new Merger(faults).entries(below, values(sided));
            Where where = side == Side.LEFT ? Where.LEFT : Where.RIGHT;
            return new Sided(side.prefix() + id, id, where, values, key.key().place());
        }

        private boolean mayDiffer(Entry entry, @Nullable Entry plain) {
            String wrong = !sides
                    ? "the sheet has no sides; write " + Ids.plain(entry.key().text()) + ", or sides: both at the top"
                    : plain != null && plain.value() instanceof Entries values && isShared(values)
                            ? Ids.plain(entry.key().text()) + " is shared: it exists once and cannot differ by side"
                            : plain == null && entry.value() instanceof Node.Text gone && gone.isNothing()
                                    ? entry.key().text() + " removes what nothing describes; remove the line"
                                    : "";
            if (!wrong.isEmpty()) {
                faults.add(entry.key().place(), wrong);
            }
            return wrong.isEmpty();
        }

        private boolean isShared(Entries values) {
            return parts
                    && values.get("shared") instanceof Node.Text shared
                    && shared.text().equals("true");
        }

        private Entries values(Entry entry) {
            if (entry.value() instanceof Entries values) {
                return values;
            }
            faults.add(
                    entry.place(),
                    entry.key().text() + " is " + entry.value().phrase() + "; write its keys as a map, such as "
                            + entry.key().text() + ": {name: ...}");
            return Entries.none(entry.place());
        }
    }
}

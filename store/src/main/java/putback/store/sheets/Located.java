package putback.store.sheets;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import putback.store.sheets.Node.Entries;
import putback.store.sheets.Node.Entry;
import putback.store.sheets.Node.Items;

/** Finds the place of a path in a sheet, as far as the path leads. */
final class Located {
    private final Entries top;
    private final Map<String, Sided> byPath = new HashMap<>();

    Located(Entries top) {
        this.top = top;
    }

    /** Makes an entry known under its key, as it counts on its side. */
    void put(String section, List<Sided> entries) {
        for (Sided entry : entries) {
            byPath.put(section + "/" + entry.key(), entry);
        }
    }

    /** The place of the deepest thing on the path that is there. */
    Place of(List<String> path) {
        Sided entry = path.size() < 2 ? null : byPath.get(path.get(0) + "/" + path.get(1));
        return entry == null
                ? deepest(top, path, top.place())
                : deepest(entry.values(), path.subList(2, path.size()), entry.at());
    }

    /** Where an entry is described: for its side if it differs there, else as it is for both. */
    Place ofEntry(String section, String sidedId, String id) {
        Sided sided = byPath.get(section + "/" + sidedId);
        Sided plain = sided == null ? byPath.get(section + "/" + id) : sided;
        return plain == null ? top.place() : plain.at();
    }

    private static Place deepest(Node from, List<String> path, Place start) {
        Node node = from;
        Place place = start;
        for (String step : path) {
            Entry entry = node instanceof Entries entries ? entries.byKey().get(step) : null;
            if (entry != null) {
                node = entry.value();
                place = entry.place();
            } else if (node instanceof Items items
                    && isIndex(step, items.items().size())) {
                node = items.items().get(Integer.parseInt(step));
                place = node.place();
            } else {
                break;
            }
        }
        return place;
    }

    private static boolean isIndex(String step, int size) {
        return !step.isEmpty() && step.length() < 9 && isNumber(step) && Integer.parseInt(step) < size;
    }

    private static boolean isNumber(String step) {
        for (int i = 0; i < step.length(); i++) {
            if (step.charAt(i) < '0' || step.charAt(i) > '9') {
                return false;
            }
        }
        return true;
    }
}

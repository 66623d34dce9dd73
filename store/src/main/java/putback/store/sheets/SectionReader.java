package putback.store.sheets;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import putback.quantity.Shown;
import putback.sheet.Sheet;
import putback.sheet.Side;
import putback.store.sheets.Node.Entries;
import putback.store.sheets.Node.Entry;

/** Reads the sections of a sheet whose keys are ids, and may differ by side: parts, joints and units. */
record SectionReader(Fields sheet, boolean sides, Faults faults) {
    /** Null when the section is there but is no map, so that nothing can be said of what refers to it. */
    @Nullable
    List<Sided> section(String key) {
        Node node = sheet.node(key);
        if (node == null) {
            return List.of();
        }
        if (!(node instanceof Entries section)) {
            sheet.fault(key, "this is " + node.phrase() + "; write a map of ids, such as strut: {name: Strut}");
            return null;
        }
        Entries checked = key.equals("parts") ? withoutBody(section) : section;
        for (Entry entry : checked.byKey().values()) {
            if (!Ids.isId(Ids.plain(entry.key().text()))) {
                faults.add(entry.key().place(), wrongId(entry.key().text()));
            }
        }
        return Sided.of(checked, sides, key.equals("parts"), faults);
    }

    static String wrongId(String id) {
        return "\"" + Shown.text(id) + "\" cannot be an id; use lower case letters, digits and hyphens, such as top-nut"
                + (id.contains(".") ? " (left. and right. go before parts, joints and units only)" : "");
    }

    /** The body is there without being listed, so listing it says nothing; and nothing may be said of it. */
    private Entries withoutBody(Entries parts) {
        Entry body = parts.byKey().get(Sheet.BODY);
        for (Side side : List.of(Side.LEFT, Side.RIGHT)) {
            Entry sided = parts.byKey().get(side.prefix() + Sheet.BODY);
            body = sided == null ? body : sided;
        }
        if (body == null) {
            return parts;
        }
        if (!(body.value() instanceof Entries values) || !values.byKey().isEmpty()) {
            faults.add(body.key().place(), "body is the car itself and always there; nothing is said of it, remove it");
        }
        Map<String, Entry> others = new LinkedHashMap<>(parts.byKey());
        others.keySet().removeIf(id -> Ids.plain(id).equals(Sheet.BODY));
        return new Entries(parts.place(), others);
    }
}

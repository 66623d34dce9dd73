package putback.store.sheets;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import putback.quantity.Shown;
import putback.sheet.Nearest;
import putback.store.sheets.Node.Entries;
import putback.store.sheets.Node.Entry;
import putback.store.sheets.Node.Items;
import putback.store.sheets.Node.Text;

/** Reads a sheet with all that it is built on: its bases first, in their order, then itself over them. */
final class Bases {
    static final int DEEPEST = 8;
    static final int MOST_FILES = 40;

    private final Faults faults;
    private final Removals removals = new Removals();
    private int files;

    Bases(Faults faults) {
        this.faults = faults;
    }

    /**
     * A sheet with its bases below it.
     *
     * @param whole false when a base could not be had, so that nothing can be said of what is missing
     * @param removals where something of a base was taken away
     */
    record Loaded(Entries merged, boolean whole, Removals removals) {}

    /** Null, with the faults told, when the sheet itself is not even a map. */
    @Nullable
    Loaded load(Origin origin) {
        return load(origin, List.of(origin.identity()));
    }

    private @Nullable Loaded load(Origin origin, List<String> chain) {
        files++;
        String text = origin.text(faults);
        Entries own = text == null ? null : compose(origin.name(), text);
        if (own == null) {
            return null;
        }
        Entries below = Entries.none(own.place());
        boolean whole = true;
        for (Text written : bases(own)) {
            Origin base = origin.base(written.text());
            Loaded loaded = base == null ? missing(written) : follow(base, written, chain);
            whole &= loaded != null && loaded.whole();
            if (loaded != null) {
                below = new Merger(faults, removals).sheets(below, loaded.merged());
            }
        }
        Faults told = whole ? faults : new Faults();
        return new Loaded(new Merger(told, removals).sheets(withoutHead(below), own), whole, removals);
    }

    private @Nullable Entries compose(String name, String text) {
        Entries plain = PlainYaml.compose(name, text);
        if (plain != null) {
            return plain;
        }
        String printable = SourceText.printable(text, name, Form.SHEET, faults);
        return printable == null ? null : Composer.compose(name, printable, faults);
    }

    private @Nullable Loaded follow(Origin base, Text written, List<String> chain) {
        String wrong = chain.contains(base.identity())
                ? "is built on itself: " + String.join(" on ", names(chain, base)) + "; remove one of these bases"
                : chain.size() >= DEEPEST
                        ? "is the " + DEEPEST + "th base on another; build on fewer"
                        : files >= MOST_FILES ? "is one base too many; at most " + MOST_FILES + " are read" : "";
        if (!wrong.isEmpty()) {
            faults.add(written.place(), "base " + Shown.text(written.text()) + " " + wrong);
            return null;
        }
        List<String> longer = new ArrayList<>(chain);
        longer.add(base.identity());
        Loaded loaded = load(base, longer);
        if (loaded == null) {
            faults.addUnlessTold(
                    written.place(), "base " + Shown.text(written.text()) + " cannot be used; see its own faults");
        }
        return loaded;
    }

    private static List<String> names(List<String> chain, Origin base) {
        List<String> names = new ArrayList<>();
        for (String identity : chain.subList(chain.indexOf(base.identity()), chain.size())) {
            names.add(identity.substring(identity.lastIndexOf('/') + 1));
        }
        names.add(names.get(0));
        return names;
    }

    private @Nullable Loaded missing(Text written) {
        String near = Nearest.to(written.text(), Stock.ids());
        faults.add(
                written.place(),
                "no base is called " + Shown.text(written.text())
                        + (near.isEmpty()
                                ? "; name a stock sheet, or a file in the same folder"
                                : "; maybe the stock sheet " + near));
        return null;
    }

    private List<Text> bases(Entries own) {
        Node node = own.get("base");
        List<Node> written = node == null || Node.isNothing(node)
                ? List.of()
                : node instanceof Items items ? items.items() : List.of(node);
        List<Text> bases = new ArrayList<>();
        for (Node base : written) {
            if (base instanceof Text text) {
                bases.add(text);
            } else {
                faults.add(
                        base.place(),
                        "base: this is " + base.phrase() + "; write the id of a sheet, or a list of them");
            }
        }
        return bases;
    }

    /** What a sheet says of itself alone is not handed on. */
    private static Entries withoutHead(Entries merged) {
        Map<String, Entry> rest = new LinkedHashMap<>(merged.byKey());
        rest.remove("sheet");
        rest.remove("base");
        return new Entries(merged.place(), rest);
    }
}

package putback.store.sheets;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import putback.store.sheets.Node.Entries;
import putback.store.sheets.Node.Items;
import putback.store.sheets.Node.Text;

/** The sheets at the bottom of those that a sheet is built on; the sheet itself where it is built on none. */
final class Roots {
    private final Set<String> found = new LinkedHashSet<>();

    private Roots() {}

    /** Their ids, in the order of the bases; what cannot be read has no bases. */
    static List<String> of(Origin origin) {
        Roots roots = new Roots();
        roots.follow(origin, Bases.DEEPEST);
        return List.copyOf(roots.found);
    }

    private void follow(Origin origin, int deeper) {
        Faults unheard = new Faults();
        String text = origin.text(unheard);
        Entries own = text == null ? null : composed(origin.name(), text, unheard);
        Node base = own == null ? null : own.get("base");
        List<Node> written = base == null ? List.of() : base instanceof Items items ? items.items() : List.of(base);
        boolean onOthers = false;
        for (Node one : written) {
            Origin below = one instanceof Text named ? origin.base(named.text()) : null;
            if (below != null && deeper > 0) {
                onOthers = true;
                follow(below, deeper - 1);
            }
        }
        if (!onOthers) {
            found.add(origin instanceof Origin.OfStock stock ? stock.id() : origin.name());
        }
    }

    private static @Nullable Entries composed(String name, String text, Faults unheard) {
        Entries plain = PlainYaml.compose(name, text);
        if (plain != null) {
            return plain;
        }
        String printable = SourceText.printable(text, name, Form.SHEET, unheard);
        return printable == null ? null : Composer.compose(name, printable, unheard);
    }
}

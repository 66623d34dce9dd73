package putback.store.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import putback.angles.reach.Tie;
import putback.angles.space.Vector;
import putback.quantity.Length;
import putback.store.sheets.Node.Entries;
import putback.store.sheets.Node.Entry;

/**
 * Reads the hoses, wires and shafts of a corner.
 *
 * @param right whether the points are of a right wheel, and mirrored
 */
record TieReader(boolean right, Faults faults) {
    private static final Map<String, Boolean> KINDS =
            new TreeMap<>(Map.of("hose", false, "wire", false, "cable", false, "shaft", true));
    private static final String EXAMPLE = "hose: {kind: hose, from: [60, 560, 520], to: [90, 690, 330], free: 310 mm}";

    List<Tie> all(Fields file) {
        Node node = file.node("ties");
        if (node != null && !(node instanceof Entries)) {
            file.fault("ties", "this is " + node.phrase() + "; write a map such as " + EXAMPLE);
        }
        List<Tie> ties = new ArrayList<>();
        for (Entry entry : node instanceof Entries map ? map.byKey().values() : List.<Entry>of()) {
            Tie tie = tie(entry);
            if (tie != null) {
                ties.add(tie);
            }
        }
        return ties;
    }

    private @Nullable Tie tie(Entry entry) {
        String name = entry.key().text();
        if (!Ids.isId(name) || !(entry.value() instanceof Entries values)) {
            faults.add(entry.place(), "a tie has an id and a map, such as " + EXAMPLE);
            return null;
        }
        Fields fields = Fields.of(values, entry.key().place(), "tie " + name, Keys.TIE, faults);
        fields.require("kind", "from", "to");
        boolean shaft = fields.word("kind", KINDS, false);
        Vector from = new Coordinates(fields, right).vector("from");
        Vector to = new Coordinates(fields, right).vector("to");
        String wrong = shaft ? "free" : "plunge";
        if (fields.has(wrong) && fields.has("kind")) {
            fields.fault(wrong, shaft ? "a shaft has plunge, not a free length" : "only a shaft has plunge");
        }
        Length length = fields.amounts().length(shaft ? "plunge" : "free", shaft);
        if (from == null || to == null) {
            return null;
        }
        Double most = length == null ? null : length.millimetres();
        return shaft ? Tie.shaft(name, from, to, most) : Tie.hose(name, from, to, most);
    }
}

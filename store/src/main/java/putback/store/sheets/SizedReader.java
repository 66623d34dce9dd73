package putback.store.sheets;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import putback.quantity.Length;
import putback.quantity.Parsed;
import putback.quantity.Shown;
import putback.store.sheets.Node.Entries;
import putback.store.sheets.Node.Entry;
import putback.store.sheets.Node.Items;
import putback.store.sheets.Node.Text;
import putback.tightening.toolbox.Owned;
import putback.tightening.toolbox.Tool;
import putback.tightening.toolbox.ToolForm;

/** Reads the tools that come in sizes: plain lists, or lists under the drive they have, or sizes with their reach. */
final class SizedReader {
    /** Larger than any fastener or drive under a car. */
    private static final double LARGEST_MM = 100;

    private static final double LONGEST_REACH_MM = 500;

    private final Fields file;
    private final Faults faults;
    private final List<Owned> tools = new ArrayList<>();

    SizedReader(Fields file, Faults faults) {
        this.file = file;
        this.faults = faults;
    }

    List<Owned> all() {
        for (ToolForm form : ToolForm.values()) {
            Node node = file.node(form.key());
            if (node instanceof Entries map) {
                ofMap(form, map);
            } else if (node != null) {
                ofList(form, node, null);
            }
        }
        return tools;
    }

    private void ofMap(ToolForm form, Entries map) {
        for (Entry entry : map.byKey().values()) {
            Text key = entry.key();
            if (form == ToolForm.CROWFOOT) {
                Length size = length(key, form, LARGEST_MM);
                Length reach = entry.value() instanceof Text text ? length(text, form, LONGEST_REACH_MM) : null;
                if (!(entry.value() instanceof Text)) {
                    told(entry.place(), form, "this is " + entry.value().phrase() + "; write its reach, such as 45 mm");
                }
                add(form, size, null, reach, key.place());
            } else {
                Length drive = length(key, form, LARGEST_MM);
                ofList(form, entry.value(), drive);
            }
        }
    }

    private void ofList(ToolForm form, Node node, @Nullable Length drive) {
        List<Node> items = node instanceof Items list ? list.items() : List.of(node);
        for (Node item : items) {
            if (item instanceof Text text) {
                add(form, length(text, form, LARGEST_MM), drive, null, text.place());
            } else {
                told(item.place(), form, "this is " + item.phrase() + "; write a size, such as 18 mm or 3/4 in");
            }
        }
    }

    private void add(
            ToolForm form, @Nullable Length size, @Nullable Length drive, @Nullable Length reach, Place place) {
        if (size == null) {
            return;
        }
        Owned one = new Owned(new Tool(form, size), drive, reach);
        if (tools.contains(one)) {
            told(place, form, size.acrossFlats() + " is there already; name it once");
        } else {
            tools.add(one);
        }
    }

    private @Nullable Length length(Text text, ToolForm form, double mostMm) {
        Parsed<Length> parsed = Length.parse(text.text());
        if (!(parsed instanceof Parsed.Value<Length> read)) {
            told(text.place(), form, parsed.refusal());
            return null;
        }
        double millimetres = read.value().millimetres();
        if (millimetres > 0 && millimetres <= mostMm) {
            return read.value();
        }
        told(
                text.place(),
                form,
                "\"" + Shown.text(text.text()) + "\" is not possible; it is more than 0 and at most " + (int) mostMm
                        + " mm");
        return null;
    }

    private void told(Place place, ToolForm form, String message) {
        faults.add(place, form.key() + ": " + message);
    }
}

package putback.store.sheets;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import putback.store.sheets.Node.Entries;
import putback.store.sheets.Node.Entry;
import putback.store.sheets.Node.Text;
import putback.tightening.toolbox.Interval;
import putback.tightening.toolbox.Kept;
import putback.tightening.toolbox.Owned;
import putback.tightening.toolbox.Toolbox;
import putback.tightening.toolbox.TorqueWrench;

/**
 * Reads the garage's tools. Whatever the file holds, the answer is a toolbox or a list of faults with their places;
 * nothing is thrown.
 */
public final class ToolboxReader {
    private static final String DEMO = "putback/toolboxes/demo.yaml";
    private static final int MOST_MONTHS = 120;
    static final int MOST_OPERATIONS = 10_000_000;

    private final Faults faults = new Faults();

    private ToolboxReader() {}

    public static ToolboxRead read(String file) {
        ToolboxReader reader = new ToolboxReader();
        return reader.answer(reader.file(file), file);
    }

    /** The toolbox of the demo's invented garage. */
    public static ToolboxRead demo() {
        ToolboxReader reader = new ToolboxReader();
        try (InputStream stream = ToolboxReader.class.getResourceAsStream("/" + DEMO)) {
            byte[] bytes = stream == null ? new byte[0] : stream.readAllBytes();
            return reader.answer(SourceText.decoded(bytes, DEMO, Form.TOOLBOX, reader.faults), DEMO);
        } catch (IOException broken) {
            reader.faults.add(Place.startOf(DEMO), "it cannot be read; the program file may be damaged");
            return new ToolboxRead.Faulty(reader.faults.sorted());
        }
    }

    private @Nullable String file(String name) {
        Place start = Place.startOf(name.isEmpty() ? "file" : name);
        try {
            if (!name.isEmpty()) {
                return SourceText.ofFile(Path.of(name), name, Form.TOOLBOX, faults);
            }
            faults.add(start, "no file is named; give the path of a toolbox");
        } catch (InvalidPathException impossible) {
            faults.add(start, "no file can be called that; give the path of a toolbox");
        }
        return null;
    }

    private ToolboxRead answer(@Nullable String text, String name) {
        String printable = text == null ? null : SourceText.printable(text, name, Form.TOOLBOX, faults);
        Entries top = printable == null ? null : Composer.compose(name, printable, Form.TOOLBOX, faults);
        Toolbox toolbox = top == null ? null : toolbox(top);
        return toolbox == null || !faults.isEmpty()
                ? new ToolboxRead.Faulty(faults.sorted())
                : new ToolboxRead.Sound(toolbox);
    }

    private Toolbox toolbox(Entries top) {
        Fields file = Fields.of(top, top.place(), "the toolbox", Keys.TOOLBOX, faults);
        file.require("toolbox");
        String id = file.text("toolbox", "toolbox");
        if (file.has("toolbox") && !Ids.isId(id)) {
            file.fault("toolbox", "an id has lower case letters, digits and hyphens, such as blue-cabinet");
        }
        SizedReader sizes = new SizedReader(file, faults);
        List<Owned> tools = sizes.all();
        List<Kept> kept = new ArrayList<>();
        plain(file, "bits", " bit", kept);
        plain(file, "other", "", kept);
        return new Toolbox(id, file.text("title", id), interval(file), tools, kept, aids(file), wrenches(file));
    }

    private static Interval interval(Fields file) {
        Fields calibrate = file.map("calibrate", Keys.CALIBRATE);
        if (calibrate == null) {
            return Interval.DEFAULT;
        }
        return new Interval(
                calibrate.has("months") ? calibrate.amounts().count("months", MOST_MONTHS) : Interval.DEFAULT.months(),
                calibrate.has("operations")
                        ? calibrate.amounts().count("operations", MOST_OPERATIONS)
                        : Interval.DEFAULT.operations());
    }

    /** Names, each once, with what a plan says after them. */
    private static void plain(Fields file, String key, String ending, List<Kept> kept) {
        for (Node item : file.lists().items(key)) {
            Text text = file.lists().asText(item, key);
            String name = text == null ? null : file.line(text, key);
            if (name == null || text == null) {
                continue;
            }
            String full = name.endsWith(ending) ? name : name + ending;
            if (has(kept, full)) {
                file.fault(text.place(), key, name + " is there already; name it once");
            } else {
                kept.add(new Kept(full, 1, "", ""));
            }
        }
    }

    private static boolean has(List<Kept> kept, String name) {
        for (Kept one : kept) {
            if (one.name().equalsIgnoreCase(name)) {
                return true;
            }
        }
        return false;
    }

    private List<Kept> aids(Fields file) {
        List<Kept> aids = new ArrayList<>();
        for (Entry entry : entries(file, "aids", "strap: {count: 4}")) {
            String name = entry.key().text();
            if (entry.value() instanceof Text && !Node.isNothing(entry.value())) {
                faults.add(entry.place(), "aid " + name + ": write a map such as {count: 4, rating: 3000 kg}");
                continue;
            }
            Entries values = entry.value() instanceof Entries map
                    ? map
                    : Entries.none(entry.key().place());
            Fields aid = Fields.of(values, entry.key().place(), "aid " + name, Keys.AID, faults);
            int count = aid.has("count") ? aid.amounts().count("count", 1000) : 1;
            aids.add(new Kept(name, count, aid.text("rating", ""), aid.text("note", "")));
        }
        return aids;
    }

    private List<TorqueWrench> wrenches(Fields file) {
        List<TorqueWrench> wrenches = new ArrayList<>();
        for (Entry entry : entries(file, "wrenches", "W1: {range: [10 N·m, 60 N·m]}")) {
            if (entry.value() instanceof Entries values) {
                TorqueWrench wrench = new WrenchReader(faults)
                        .wrench(entry.key().text(), values, entry.key().place());
                if (wrench != null) {
                    wrenches.add(wrench);
                }
            } else {
                faults.add(
                        entry.place(),
                        "wrench " + entry.key().text() + " is " + entry.value().phrase()
                                + "; write a map such as {range: [10 N·m, 60 N·m], calibrated: 2026-02-11}");
            }
        }
        return wrenches;
    }

    private static List<Entry> entries(Fields file, String key, String example) {
        Node node = file.node(key);
        if (node instanceof Entries section) {
            return List.copyOf(section.byKey().values());
        }
        if (node != null) {
            file.fault(key, "this is " + node.phrase() + "; write a map such as " + example);
        }
        return List.of();
    }
}

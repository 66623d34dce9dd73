package putback.store.overlay;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import putback.store.sheets.KeyOrder;
import putback.store.sheets.Option;
import putback.store.sheets.Piece;
import putback.store.sheets.Piece.Entries;
import putback.store.sheets.Piece.Items;
import putback.store.sheets.Piece.Text;
import putback.store.sheets.PieceRead;
import putback.store.sheets.PieceReader;
import putback.store.sheets.Question;
import putback.store.sheets.SheetReader;

/**
 * A car's own sheet as data: the sheets it is built on, and what differs. What it does not know it keeps.
 *
 * @param top the map of the whole text
 */
public record Overlay(Entries top) {
    static final String JOINTS = "joints";
    static final String PARTS = "parts";

    /** What the fill-in card says of a joint. */
    public static final List<String> CARD =
            List.of("thread", "class", "hex", "hold", "torque", "source", "condition", "tighten", "once");

    /** Reads the text of a sheet; unknown keys are no fault here. */
    public static OverlayRead read(String name, String yaml) {
        PieceRead read = PieceReader.read(name, yaml);
        return read instanceof PieceRead.Sound sound
                ? new OverlayRead.Sound(new Overlay(sound.top()))
                : new OverlayRead.Faulty(((PieceRead.Faulty) read).faults());
    }

    /** One from which nothing differs yet. */
    public static Overlay on(String sheet, String title, List<String> bases) {
        List<Piece> names = new ArrayList<>();
        for (String base : bases) {
            names.add(Text.of(base));
        }
        Entries top = Entries.NONE.with("sheet", Text.of(sheet)).with("title", Text.of(title));
        return new Overlay(names.isEmpty() ? top : top.with("base", new Items(names)));
    }

    /** As text: the same overlay gives the same text, and reading it gives this one again. */
    public String write() {
        return Yaml.write(top);
    }

    /** What it describes; empty where it does not say. */
    public String title() {
        return top.get("title") instanceof Text text ? text.text() : "";
    }

    /** The sheets it is built on, in their order. */
    public List<String> bases() {
        Piece base = top.get("base");
        List<Piece> written = base instanceof Items items ? items.items() : base == null ? List.of() : List.of(base);
        List<String> bases = new ArrayList<>();
        for (Piece one : written) {
            if (one instanceof Text text && !Piece.isNothing(text)) {
                bases.add(text.text());
            }
        }
        return List.copyOf(bases);
    }

    /** The same under another id and title. */
    public Overlay named(String sheet, String title) {
        return new Overlay(top.with("sheet", Text.of(sheet)).with("title", Text.of(title)));
    }

    /** What it says of an id in a section, with its side where it has one; empty where it says nothing. */
    public Entries of(String section, String id) {
        return section(section).get(id) instanceof Entries entries ? entries : Entries.NONE;
    }

    /** What it says of a joint. */
    public Entries joint(String id) {
        return of(JOINTS, id);
    }

    /** Ids that it says are not on this car. */
    public List<String> absent(String section) {
        List<String> absent = new ArrayList<>();
        for (Map.Entry<String, Piece> entry : section(section).byKey().entrySet()) {
            if (Piece.isNothing(entry.getValue())) {
                absent.add(entry.getKey());
            }
        }
        return List.copyOf(absent);
    }

    /** Joints that it adds itself. */
    public List<String> added() {
        List<String> added = new ArrayList<>();
        for (String id : section(JOINTS).byKey().keySet()) {
            if (joint(id).get("joins") != null) {
                added.add(id);
            }
        }
        return List.copyOf(added);
    }

    /** The same with one key of an entry said; {@link Piece#NOTHING} says that it is not known, or not there. */
    public Overlay with(String section, String id, String key, Piece value) {
        return put(section, id, of(section, id).with(key, value));
    }

    /** The same with one key of an entry left to the sheets below. */
    public Overlay without(String section, String id, String key) {
        Entries left = of(section, id).without(key);
        return left.byKey().isEmpty() ? drop(section, id) : put(section, id, left);
    }

    /** The same with a whole entry, or with {@link Piece#NOTHING} for one that is not on this car. */
    public Overlay put(String section, String id, Piece entry) {
        return new Overlay(top.with(section, section(section).with(id, entry)));
    }

    /** The same saying nothing of an entry. */
    public Overlay drop(String section, String id) {
        Entries left = section(section).without(id);
        return new Overlay(left.byKey().isEmpty() ? top.without(section) : top.with(section, left));
    }

    /** The same without what the fill-in card says of joints that the sheets below describe. */
    public Overlay bare() {
        Overlay bare = this;
        for (String id : section(JOINTS).byKey().keySet()) {
            if (joint(id).get("joins") == null) {
                for (String key : CARD) {
                    bare = bare.joint(id).get(key) == null ? bare : bare.without(JOINTS, id, key);
                }
            }
        }
        return bare;
    }

    /** The same with what an answer says of the car. */
    public Overlay answered(Question question, String option) {
        for (Option one : question.options()) {
            if (one.id().equals(option)) {
                return laid(one.says());
            }
        }
        return this;
    }

    /** The same with another over it: by id and key by key, and what removes stays. */
    public Overlay laid(Entries over) {
        Map<String, Piece> merged = new LinkedHashMap<>(top.byKey());
        for (Map.Entry<String, Piece> entry : over.byKey().entrySet()) {
            String key = entry.getKey();
            boolean section = KeyOrder.sections().contains(key);
            merged.put(
                    key,
                    section && entry.getValue() instanceof Entries values
                            ? Laying.section(section(key), values)
                            : entry.getValue());
        }
        return new Overlay(new Entries(merged));
    }

    private Entries section(String name) {
        return top.get(name) instanceof Entries entries ? entries : Entries.NONE;
    }

    /** The stock sheets among those it is built on. */
    public List<String> stock() {
        List<String> stock = new ArrayList<>(bases());
        stock.retainAll(SheetReader.stockIds());
        return stock;
    }

    /** A value as a person typed it. */
    public static @Nullable String typed(@Nullable Piece piece) {
        return piece instanceof Text text && !Piece.isNothing(text) ? text.text() : null;
    }
}

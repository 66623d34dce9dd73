package putback.store.sheets;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import putback.quantity.Angle;
import putback.quantity.Length;
import putback.quantity.Torque;
import putback.sheet.Condition;
import putback.sheet.Fastener;
import putback.sheet.Height;
import putback.sheet.Holding;
import putback.sheet.Tightening;
import putback.sheet.WithNew;
import putback.store.sheets.Node.Entries;
import putback.store.sheets.Node.Entry;
import putback.store.sheets.Node.Text;

/** Reads what a joint says of its fastener, and what differs once a part is a new one. */
record FastenerReader(Faults faults) {
    private static final int MOST = 100;
    private static final String SNUG = "snug";

    Fastener fastener(Fields joint) {
        Tightening tightening = tightening(joint);
        List<Torque> window = window(joint, tightening);
        return new Fastener(
                joint.amounts().count("count", MOST),
                thread(joint),
                strengthClass(joint),
                joint.amounts().length("hex", false),
                holding(joint),
                tightening,
                joint.text("source"),
                joint.word("condition", Words.CONDITIONS, Condition.DRY),
                joint.flag("critical"),
                joint.word("tighten", Words.TIGHTEN, Height.RAISED),
                joint.flag("once"),
                joint.word("turn", Words.TURNS, false),
                window.isEmpty() ? null : window.get(0),
                window.isEmpty() ? null : window.get(1));
    }

    /** The fasteners that a joint has once a part is a new one: its own, overlaid by what is said under the part. */
    List<WithNew> withNew(Entries joint, String what) {
        List<WithNew> withNew = new ArrayList<>();
        Entry under = joint.byKey().get("with-new");
        if (under == null) {
            return withNew;
        }
        if (!(under.value() instanceof Entries byPart)) {
            faults.add(
                    under.place(),
                    "with-new of " + what + ": this is " + under.value().phrase()
                            + "; write a map of parts, such as {strut: {torque: 55 N·m}}");
            return withNew;
        }
        Map<String, Entry> own = new LinkedHashMap<>(joint.byKey());
        own.keySet().retainAll(Keys.FASTENER);
        Entries fastener = new Entries(joint.place(), own);
        for (Entry entry : byPart.byKey().values()) {
            String part = entry.key().text();
            String name = "with-new " + part + " of " + what;
            if (!(entry.value() instanceof Entries over)) {
                faults.add(
                        entry.place(),
                        name + " is " + entry.value().phrase()
                                + "; write a map of what differs, such as {torque: 55 N·m}");
                continue;
            }
            Fields.of(over, entry.key().place(), name, Keys.FASTENER, faults);
            Faults found = new Faults();
            Entries merged = new Merger(found).entries(fastener, over);
            Fields fields = Fields.of(merged, entry.key().place(), name, Keys.FASTENER, found);
            withNew.add(new WithNew(part, new FastenerReader(found).fastener(fields)));
            faults.addUnlessTold(found);
        }
        return withNew;
    }

    private static Tightening tightening(Fields joint) {
        Node node = joint.node("torque");
        if (node instanceof Entries) {
            return staged(joint);
        }
        Text text = joint.single("torque");
        if (text == null) {
            return Tightening.UNKNOWN;
        }
        if (text.text().equals(SNUG)) {
            return Tightening.SNUG;
        }
        Torque torque = joint.amounts().torque(text, "torque");
        return torque == null ? Tightening.UNKNOWN : new Tightening.ToTorque(torque);
    }

    private static Tightening staged(Fields joint) {
        Fields staged = joint.map("torque", Keys.TORQUE);
        if (staged == null) {
            return Tightening.UNKNOWN;
        }
        staged.require("torque");
        Text text = staged.single("torque");
        Torque torque = text == null ? null : staged.amounts().torque(text, "torque");
        Angle angle = staged.amounts().turn("angle");
        return torque == null
                ? Tightening.UNKNOWN
                : angle == null ? new Tightening.ToTorque(torque) : new Tightening.TorqueThenAngle(torque, angle);
    }

    private static @Nullable String thread(Fields joint) {
        Text text = joint.single("thread");
        return text == null ? null : joint.told(text, "thread", Designations.thread(text.text()), true, "");
    }

    private static @Nullable String strengthClass(Fields joint) {
        Text text = joint.single("class");
        return text == null ? null : joint.told(text, "class", Designations.strengthClass(text.text()), true, "");
    }

    private static Holding holding(Fields joint) {
        Fields hold = joint.map("hold", Keys.HOLD);
        if (hold == null) {
            return Holding.NOTHING;
        }
        Length hex = hold.amounts().length("hex", false);
        Length key = hold.amounts().length("key", false);
        if (hold.has("hex") == hold.has("key")) {
            joint.fault("hold", "write either {hex: 18 mm} or {key: 6 mm}");
        }
        return hex != null ? new Holding.ByHex(hex) : key != null ? new Holding.ByKey(key) : Holding.NOTHING;
    }

    /** Two torques, or nothing. */
    private static List<Torque> window(Fields joint, Tightening tightening) {
        List<Torque> window = new ArrayList<>();
        for (Node item : joint.lists().items("window")) {
            Text text = joint.lists().asText(item, "window");
            Torque limit = text == null ? null : joint.amounts().limit(text, "window");
            if (limit == null) {
                return List.of();
            }
            window.add(limit);
        }
        boolean judged = joint.has("window") && !(joint.has("torque") && tightening instanceof Tightening.Unknown);
        String wrong = judged ? wrong(window, tightening) : "";
        if (!wrong.isEmpty()) {
            joint.fault("window", wrong);
        }
        return wrong.isEmpty() ? window : List.of();
    }

    private static String wrong(List<Torque> window, Tightening tightening) {
        if (window.size() != 2) {
            return "write its low and its high end, such as [92 N·m, 104 N·m]";
        }
        double low = window.get(0).newtonMetres();
        double high = window.get(1).newtonMetres();
        if (low > high) {
            return "the low end comes first; swap the two";
        }
        if (tightening instanceof Tightening.ToTorque to) {
            double torque = to.torque().newtonMetres();
            return torque < low || torque > high ? "the torque " + to.torque().text() + " is outside it" : "";
        }
        return tightening instanceof Tightening.TorqueThenAngle
                ? ""
                : "a window belongs to a torque, and none is given";
    }
}

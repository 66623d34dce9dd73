package putback.app.web.card;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import putback.app.ladder.Figures;
import putback.plan.Plan;
import putback.plan.steps.Act;
import putback.plan.steps.Step;
import putback.quantity.Length;
import putback.sheet.Assembly;
import putback.sheet.Fastener;
import putback.sheet.Holding;
import putback.sheet.Joint;
import putback.sheet.Side;
import putback.store.overlay.Overlay;
import putback.store.sheets.Piece;

/**
 * The joints that a plan opens, as rows of the card, in the order in which they are opened.
 *
 * @param bare the car without the figures of its own card; what it says is left to the sheets below
 * @param split joints that are shown for each side
 * @param typed what was typed and is not kept, by name of field
 * @param faults by name of field
 */
record CardRows(
        Overlay overlay, Assembly bare, Set<String> split, Map<String, String> typed, Map<String, String> faults) {
    static final String NOT_KNOWN = "not known";
    /** In the order of the card. */
    static final List<String> KEYS = List.of("torque", "source", "hex", "hold", "thread", "class", "condition");

    List<CardRow> of(Plan plan, CardWords words) {
        Set<String> ids = new LinkedHashSet<>();
        Map<String, Joint> joints = new LinkedHashMap<>();
        for (Step step : plan.steps()) {
            Joint joint = step.joint();
            if (step.act() == Act.UNDO && joint != null && ids.add(joint.entry().id())) {
                joints.put(joint.entry().id(), joint);
            }
        }
        List<CardRow> rows = new ArrayList<>();
        for (Joint joint : joints.values()) {
            boolean apart = joint.side() != Side.NONE
                    && differs(plan.assembly(), joint.entry().id());
            if (!apart) {
                rows.add(row(joint, joint.entry().id(), joint.side() == Side.NONE ? "" : "splits", words));
                continue;
            }
            for (Joint one : plan.assembly().joints()) {
                if (one.entry().id().equals(joint.entry().id())) {
                    rows.add(row(one, one.id(), "joins", words));
                }
            }
        }
        return rows;
    }

    private boolean differs(Assembly assembly, String id) {
        if (split.contains(id)) {
            return true;
        }
        Fastener first = null;
        int there = 0;
        for (Joint joint : assembly.joints()) {
            if (joint.entry().id().equals(id)) {
                there++;
                if (first != null && !first.equals(joint.fastener())) {
                    return true;
                }
                first = joint.fastener();
            }
        }
        return there == 1 || sided(Side.LEFT, id) || sided(Side.RIGHT, id);
    }

    private boolean sided(Side side, String id) {
        return Overlay.CARD.stream()
                .anyMatch(key -> overlay.joint(side.prefix() + id).get(key) != null);
    }

    private CardRow row(Joint joint, String id, String apart, CardWords words) {
        Fastener fastener = joint.fastener();
        String kind = joint.entry().kind().word();
        String pieces = fastener.count() > 1 ? fastener.count() + " × " + kind : kind;
        String name = id.equals(joint.id()) ? joint.name() : joint.entry().name();
        if (!joint.entry().kind().threaded()) {
            return new CardRow(id, name, pieces, Map.of(), false, CardCheck.NOTHING, "");
        }
        Map<String, CardRow.Field> fields = new HashMap<>();
        for (String key : KEYS) {
            fields.put(key, field(joint, id, key));
        }
        String once = typed.get("once." + id);
        CardRow row = new CardRow(
                id,
                name,
                pieces,
                fields,
                once == null ? fastener.singleUse() : once.equals("yes"),
                CardCheck.NOTHING,
                apart);
        Map<String, String> asked = new HashMap<>();
        for (String key : List.of("thread", "class", "condition")) {
            asked.put(key, row.holds(key));
        }
        asked.put("torque", row.field("torque").value());
        boolean wrong = !row.field("torque").fault().isEmpty();
        CardCheck check = wrong ? CardCheck.NOTHING : CardCheck.of(asked, words);
        return new CardRow(id, name, pieces, fields, row.once(), check, apart);
    }

    private CardRow.Field field(Joint joint, String id, String key) {
        String name = key + "." + id;
        Piece own = overlay.joint(id).get(key);
        String kept = CardWords.typed(key, own);
        String now = typed.get(name);
        String fault = faults.get(name);
        String below = Piece.isNothing(own) ? NOT_KNOWN : below(joint, id, key);
        return new CardRow.Field(now == null ? kept : now, below, fault == null ? "" : fault);
    }

    /** What is said where the card says nothing: for one side, what holds for both. */
    private String below(Joint joint, String id, String key) {
        Fastener fastener = null;
        for (Joint one : bare.joints()) {
            if (one.id().equals(joint.id())) {
                fastener = one.fastener();
            }
        }
        boolean ofSide = !id.equals(joint.entry().id());
        String both =
                ofSide ? CardWords.typed(key, overlay.joint(joint.entry().id()).get(key)) : "";
        return !both.isEmpty() ? both : fastener == null ? NOT_KNOWN : shown(fastener, key);
    }

    private static String shown(Fastener fastener, String key) {
        String shown =
                switch (key) {
                    case "torque" -> Figures.firstUnit(fastener);
                    case "source" -> text(fastener.source()).replaceFirst("^example,.*", "example");
                    case "hex" -> size(fastener.hex());
                    case "hold" -> held(fastener.hold());
                    case "thread" -> text(fastener.thread());
                    case "class" -> text(fastener.propertyClass());
                    default -> fastener.condition().word();
                };
        return shown.isEmpty() ? NOT_KNOWN : shown;
    }

    private static String held(Holding hold) {
        if (hold instanceof Holding.ByHex hex) {
            return size(hex.size());
        }
        return hold instanceof Holding.ByKey key ? size(key.size()) + " key" : "";
    }

    private static String size(@Nullable Length length) {
        return length == null ? "" : length.acrossFlats();
    }

    private static String text(@Nullable String text) {
        return text == null ? "" : text;
    }
}

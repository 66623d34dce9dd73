package putback.app.web.card;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import putback.app.web.frame.Form;
import putback.store.overlay.Overlay;
import putback.store.sheets.Fault;
import putback.store.sheets.Piece;

/**
 * What a sent card changes. Only what differs from what stood there when the card was shown is taken, so that what
 * others changed meanwhile stays.
 *
 * @param overlay with the changes
 * @param touched what was typed, by name of field
 */
record CardEdit(Overlay overlay, Map<String, String> touched) {
    private static final String JOINTS = "joints";

    /**
     * @param shown the rows as they stood when the card was shown
     * @param now what the car's own sheet says by now
     */
    static CardEdit of(List<CardRow> shown, Overlay now, Form form, CardWords words) {
        Writing writing = new Writing(now, form, words);
        for (CardRow row : shown) {
            if (row.turns()) {
                writing.row(row);
            }
        }
        return new CardEdit(writing.overlay, writing.touched);
    }

    private static final class Writing {
        private final Form form;
        private final CardWords words;
        private final Map<String, String> touched = new LinkedHashMap<>();
        private Overlay overlay;
        private String sourceAbove = "";

        Writing(Overlay overlay, Form form, CardWords words) {
            this.overlay = overlay;
            this.form = form;
            this.words = words;
        }

        void row(CardRow row) {
            String source = form.text("source." + row.id());
            if (!source.isEmpty() && !CardWords.isNone(source)) {
                sourceAbove = source;
            }
            for (String key : CardRows.KEYS) {
                if (form.values().containsKey(key + "." + row.id())) {
                    field(row, key);
                }
            }
            String once = form.text("once." + row.id());
            String had = form.text("had-once." + row.id());
            if (!had.isEmpty() && !once.equals(had.equals("yes") ? "yes" : "")) {
                touched.put("once." + row.id(), once.equals("yes") ? "yes" : "no");
                overlay = overlay.with(
                        JOINTS, row.id(), "once", new Piece.Text(once.equals("yes") ? "true" : "false", false));
            }
        }

        private void field(CardRow row, String key) {
            String name = key + "." + row.id();
            String typed = form.text(name);
            CardRow.Field field = row.field(key);
            boolean newTorque = touched.containsKey("torque." + row.id())
                    && !Piece.isNothing(words.said("torque", form.text("torque." + row.id())));
            if (key.equals("source") && typed.isEmpty() && field.value().isEmpty() && newTorque) {
                typed = sourceAbove;
            }
            if (typed.equals(field.value()) || (key.equals("source") && CardWords.isNone(typed))) {
                return;
            }
            touched.put(name, typed);
            Piece said = typed.isEmpty() ? Piece.NOTHING : words.said(key, typed);
            boolean leaves = typed.isEmpty() || field.below().equals(CardRows.NOT_KNOWN);
            if (!Piece.isNothing(said)) {
                overlay = overlay.with(JOINTS, row.id(), key, said);
            } else if (!Piece.isNothing(overlay.joint(row.id()).get(key))) {
                overlay = leaves
                        ? overlay.without(JOINTS, row.id(), key)
                        : overlay.with(JOINTS, row.id(), key, Piece.NOTHING);
            }
        }
    }

    /** Which fields the faults of a sheet are about, and what is left over under an empty name. */
    Map<String, String> told(List<Fault> faults) {
        Map<String, String> told = new HashMap<>();
        List<String> others = new ArrayList<>();
        for (Fault fault : faults) {
            String name = name(fault.message());
            if (name.isEmpty()) {
                others.add(fault.toString());
            } else {
                String message = fault.message();
                told.putIfAbsent(name, message.substring(message.indexOf(": ") + 2));
            }
        }
        if (!others.isEmpty()) {
            told.put("", String.join("\n", others));
        }
        return told;
    }

    private String name(String message) {
        int of = message.indexOf(" of joint ");
        int colon = message.indexOf(": ");
        if (of < 0 || colon < of) {
            return "";
        }
        String id = message.substring(of + " of joint ".length(), colon);
        List<String> said = List.of(message.substring(0, of).split(" of ", -1));
        for (String field : touched.keySet()) {
            String key = field.substring(0, field.indexOf('.'));
            String joint = field.substring(field.indexOf('.') + 1);
            boolean here =
                    joint.equals(id) || joint.substring(joint.indexOf('.') + 1).equals(id);
            if (here && said.contains(key)) {
                return field;
            }
        }
        return "";
    }
}

package putback.app.web.card;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import putback.app.web.frame.Form;
import putback.sheet.Assembly;
import putback.sheet.Joint;
import putback.sheet.Side;
import putback.store.overlay.Absence;
import putback.store.overlay.NewId;
import putback.store.overlay.Overlay;
import putback.store.sheets.Piece;
import putback.store.sheets.Piece.Entries;
import putback.store.sheets.Piece.Items;
import putback.store.sheets.Piece.Text;

/**
 * What a button of the card does beside keeping what was typed.
 *
 * @param why what the history says of it; empty for nothing
 * @param fault why it cannot be done; empty for nothing
 * @param address what the card's address gets behind it
 */
record CardAction(Overlay overlay, String why, String fault, String address) {
    private static final String JOINTS = "joints";

    static CardAction of(Form form, Overlay overlay, Assembly assembly) {
        String absent = form.text("absent");
        if (!absent.isEmpty()) {
            return new CardAction(
                    Absence.of(overlay, assembly, absent), "not on this car: " + name(assembly, absent), "", "");
        }
        String split = form.all("split");
        String address = split.isEmpty() ? "" : "&split=" + String.join("&split=", split.split(",", -1));
        String more = form.text("tell-apart");
        if (!more.isEmpty()) {
            return new CardAction(overlay, "", "", address + "&split=" + more);
        }
        String same = form.text("same");
        if (!same.isEmpty()) {
            return new CardAction(same(overlay, same), "both sides alike: " + name(assembly, same), "", "");
        }
        return form.text("another").isEmpty()
                ? new CardAction(overlay, "", "", address)
                : another(form, overlay, assembly, address);
    }

    private static Overlay same(Overlay overlay, String id) {
        String plain = id.substring(id.indexOf('.') + 1);
        Overlay same = overlay;
        for (Side side : List.of(Side.LEFT, Side.RIGHT)) {
            for (String key : Overlay.CARD) {
                String sided = side.prefix() + plain;
                same = same.joint(sided).get(key) == null ? same : same.without(JOINTS, sided, key);
            }
        }
        return same;
    }

    private static CardAction another(Form form, Overlay overlay, Assembly assembly, String address) {
        String name = form.text("new-name");
        List<Piece> joins = new ArrayList<>();
        for (String part : List.of(form.text("new-from"), form.text("new-to"))) {
            joins.add(Text.of(part));
        }
        String count = form.text("new-count").isEmpty() ? "1" : form.text("new-count");
        if (name.isEmpty() || joins.get(0).equals(joins.get(1))) {
            String fault = name.isEmpty() ? "Give the other fixing a name." : "Another fixing is between two parts.";
            return new CardAction(overlay, "", fault, "");
        }
        Set<String> taken = new TreeSet<>();
        assembly.joints().forEach(joint -> taken.add(joint.entry().id()));
        assembly.parts().forEach(part -> taken.add(part.entry().id()));
        Entries joint = Entries.NONE
                .with("name", Text.of(name))
                .with("joins", new Items(joins))
                .with("kind", Text.of(form.text("new-kind")))
                .with("count", Text.of(count));
        String behind = form.text("new-behind");
        Entries whole = behind.isEmpty() ? joint : joint.with("behind", new Items(List.of(Text.of(behind))));
        return new CardAction(
                overlay.put(JOINTS, NewId.of(name, "fixing", taken), whole), "another fixing: " + name, "", address);
    }

    private static String name(Assembly assembly, String id) {
        for (Joint joint : assembly.joints()) {
            if (joint.id().equals(id)) {
                return joint.name();
            }
            if (joint.entry().id().equals(id)) {
                return joint.entry().name();
            }
        }
        return id;
    }
}

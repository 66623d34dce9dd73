package putback.store.overlay;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import putback.sheet.Access;
import putback.sheet.Aside;
import putback.sheet.Assembly;
import putback.sheet.JointEntry;
import putback.sheet.PartEntry;
import putback.sheet.Sheet;
import putback.sheet.Side;
import putback.sheet.UnitEntry;
import putback.sheet.Where;
import putback.store.sheets.Piece;
import putback.store.sheets.Piece.Entries;
import putback.store.sheets.Piece.Items;
import putback.store.sheets.Piece.Text;

/** Takes a joint off a car, with all that names it: a part that nothing else holds goes with it. */
public final class Absence {
    private final Sheet sheet;
    private Overlay overlay;

    private Absence(Overlay overlay, Sheet sheet) {
        this.overlay = overlay;
        this.sheet = sheet;
    }

    /**
     * The overlay without the joint.
     *
     * @param assembly the car as the overlay describes it
     * @param id of a joint; with a side for that side only, and then only the joint itself goes
     */
    public static Overlay of(Overlay overlay, Assembly assembly, String id) {
        Absence absence = new Absence(overlay, assembly.sheet());
        if (id.startsWith(Side.LEFT.prefix()) || id.startsWith(Side.RIGHT.prefix())) {
            return overlay.put(Overlay.JOINTS, id, Piece.NOTHING);
        }
        Set<String> gone = new LinkedHashSet<>(Set.of(id));
        absence.remove(Overlay.JOINTS, id);
        absence.unnameJoint(gone);
        Set<String> loose = absence.loose(id);
        for (String part : loose) {
            absence.remove(Overlay.PARTS, part);
        }
        absence.unnamePart(loose);
        return absence.overlay;
    }

    private void remove(String section, String id) {
        boolean added = overlay.of(section, id).get("joins") != null;
        for (Side side : List.of(Side.LEFT, Side.RIGHT)) {
            overlay = overlay.drop(section, side.prefix() + id);
        }
        overlay = added ? overlay.drop(section, id) : overlay.put(section, id, Piece.NOTHING);
    }

    /** Parts that no other joint holds. */
    private Set<String> loose(String id) {
        Set<String> loose = new LinkedHashSet<>();
        Set<String> held = new LinkedHashSet<>(Set.of(Sheet.BODY));
        for (JointEntry joint : sheet.joints()) {
            for (String part : joint.joins()) {
                (joint.id().equals(id) ? loose : held).add(plain(part));
            }
        }
        loose.removeAll(held);
        return loose;
    }

    private void unnameJoint(Set<String> gone) {
        for (JointEntry joint : sheet.joints()) {
            if (!gone.contains(joint.id())) {
                String id = prefix(joint.where()) + joint.id();
                list(Overlay.JOINTS, id, "after", joint.after(), gone);
                list(Overlay.JOINTS, id, "ahead-of", joint.aheadOf(), gone);
                list(Overlay.JOINTS, id, "loosen-before", joint.timing().loosenBefore(), gone);
                list(Overlay.JOINTS, id, "stays-shut", joint.wording().staysShut(), gone);
            }
        }
        for (PartEntry part : sheet.parts()) {
            Aside aside = part.aside();
            if (aside != null && names(aside.open(), gone)) {
                Piece open = texts(without(aside.open(), gone));
                String id = prefix(part.where()) + part.id();
                Entries now = overlay.of(Overlay.PARTS, id).get("aside") instanceof Entries said ? said : Entries.NONE;
                overlay = overlay.with(Overlay.PARTS, id, "aside", now.with("open", open));
            }
        }
    }

    private void unnamePart(Set<String> gone) {
        for (JointEntry joint : sheet.joints()) {
            String id = prefix(joint.where()) + joint.id();
            boolean there = !Piece.isNothing(entry(Overlay.JOINTS, joint.id()));
            if (there) {
                access(id, "behind", joint.behind(), gone);
                Access onWheels = joint.reachOnWheels();
                if (onWheels != null) {
                    access(id, "reach-on-wheels", onWheels, gone);
                }
            }
        }
        for (PartEntry part : sheet.parts()) {
            if (!gone.contains(part.id())) {
                list(Overlay.PARTS, prefix(part.where()) + part.id(), "companions", part.companions(), gone);
            }
        }
        for (UnitEntry unit : sheet.units()) {
            String id = prefix(unit.where()) + unit.id();
            list("units", id, "parts", unit.parts(), gone);
            list("units", id, "companions", unit.companions(), gone);
        }
    }

    private Piece entry(String section, String id) {
        Map<String, Piece> entries = overlay.top().get(section) instanceof Entries there ? there.byKey() : Map.of();
        Piece entry = entries.get(id);
        return entry == null ? Entries.NONE : entry;
    }

    private void access(String id, String key, Access access, Set<String> gone) {
        List<Piece> clauses = new ArrayList<>();
        boolean changed = false;
        for (List<String> clause : access.clauses()) {
            List<String> left = without(clause, gone);
            changed |= left.size() < clause.size();
            if (left.size() == 1) {
                clauses.add(Text.of(left.get(0)));
            } else if (!left.isEmpty()) {
                clauses.add(texts(left));
            }
        }
        if (changed) {
            overlay = overlay.with(Overlay.JOINTS, id, key, new Items(clauses));
        }
    }

    private void list(String section, String id, String key, List<String> names, Set<String> gone) {
        if (names(names, gone)) {
            overlay = overlay.with(section, id, key, texts(without(names, gone)));
        }
    }

    private static boolean names(List<String> names, Set<String> gone) {
        return without(names, gone).size() < names.size();
    }

    private static List<String> without(List<String> names, Set<String> gone) {
        List<String> left = new ArrayList<>();
        for (String name : names) {
            if (!gone.contains(plain(name))) {
                left.add(name);
            }
        }
        return left;
    }

    private static Items texts(List<String> names) {
        List<Piece> texts = new ArrayList<>();
        for (String name : names) {
            texts.add(Text.of(name));
        }
        return new Items(texts);
    }

    private static String plain(String name) {
        return name.substring(name.indexOf('.') + 1);
    }

    private static String prefix(Where where) {
        return where == Where.LEFT ? Side.LEFT.prefix() : where == Where.RIGHT ? Side.RIGHT.prefix() : "";
    }
}

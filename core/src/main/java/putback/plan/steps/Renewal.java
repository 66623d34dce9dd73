package putback.plan.steps;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collections;
import java.util.List;
import putback.plan.selection.Selection;
import putback.plan.selection.Target;
import putback.plan.selection.Wanted;
import putback.sheet.Assembly;
import putback.sheet.Fastener;
import putback.sheet.Joint;
import putback.sheet.Part;
import putback.sheet.Side;
import putback.sheet.Unit;
import putback.sheet.WithNew;

/** What is renewed on a trip, and what that changes at the fixings. */
public final class Renewal {
    private final Assembly assembly;
    private final Selection selection;
    private final List<Unit> units = new ArrayList<>();
    private final List<Part> parts = new ArrayList<>();
    private final List<Part> spoiled = new ArrayList<>();
    private final BitSet renewed = new BitSet();

    private Renewal(Assembly assembly, Wanted wanted, Selection selection) {
        this.assembly = assembly;
        this.selection = selection;
        List<Unit> named = new ArrayList<>();
        for (Target target : wanted.targets()) {
            if (target instanceof Target.OfUnit one) {
                named.add(one.unit());
            }
        }
        for (Unit unit : named) {
            if (!isCovered(unit, named)) {
                units.add(unit);
                for (int part : unit.parts()) {
                    renewed.set(part);
                }
            }
        }
        for (Target target : wanted.targets()) {
            if (target instanceof Target.OfPart one && !renewed.get(one.part().index())) {
                parts.add(one.part());
            }
        }
        for (Part part : parts) {
            renewed.set(part.index());
        }
        for (int part : selection.spoiled()) {
            if (!renewed.get(part)) {
                spoiled.add(assembly.parts().get(part));
                renewed.set(part);
            }
        }
    }

    public static Renewal of(Assembly assembly, Wanted wanted, Selection selection) {
        return new Renewal(assembly, wanted, selection);
    }

    private static boolean isCovered(Unit unit, List<Unit> named) {
        for (Unit other : named) {
            if (isWider(other, unit)) {
                return true;
            }
        }
        return false;
    }

    private static boolean isWider(Unit other, Unit unit) {
        if (other.index() == unit.index() || !other.parts().containsAll(unit.parts())) {
            return false;
        }
        return other.parts().size() > unit.parts().size() || other.index() < unit.index();
    }

    /** Units that are renewed in one piece, without those inside another one. */
    public List<Unit> units() {
        return List.copyOf(units);
    }

    /** Parts that are wanted by themselves, without those inside a renewed unit. */
    public List<Part> parts() {
        return List.copyOf(parts);
    }

    /** Parts renewed although nobody asked, because opening a joint ruins them. */
    public List<Part> spoiled() {
        return List.copyOf(spoiled);
    }

    /** Whether a new one goes on, for whatever reason. */
    public boolean renews(int part) {
        return renewed.get(part);
    }

    /** The opened joint that ruins a part; the first one, and the name of the part itself where none is found. */
    public String spoiler(Part part) {
        for (int index : selection.open()) {
            Joint joint = assembly.joints().get(index);
            if (joint.spoils().contains(part.index())) {
                return joint.name();
            }
        }
        return part.name();
    }

    /** The fastener as it goes back: a new part or unit may ask for another one. */
    public Fastener fastenerBack(Joint joint) {
        for (WithNew withNew : joint.entry().withNew()) {
            if (comesNew(withNew.part(), joint)) {
                return withNew.fastener();
            }
        }
        return joint.fastener();
    }

    private boolean comesNew(String written, Joint joint) {
        for (int part : joint.joins()) {
            if (renewed.get(part) && isMeant(written, assembly.parts().get(part).id(), joint.side())) {
                return true;
            }
        }
        for (Unit unit : units) {
            if (isMeant(written, unit.id(), joint.side()) && !Collections.disjoint(unit.parts(), joint.joins())) {
                return true;
            }
        }
        return false;
    }

    private static boolean isMeant(String written, String id, Side side) {
        return id.equals(written) || id.equals(side.prefix() + written);
    }
}

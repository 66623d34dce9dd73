package putback.plan;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import putback.plan.selection.Selection;
import putback.plan.selection.Wanted;
import putback.plan.steps.Renewal;
import putback.sheet.Assembly;
import putback.sheet.Fastener;
import putback.sheet.Joint;
import putback.sheet.JointKind;
import putback.sheet.Part;
import putback.sheet.Side;
import putback.sheet.Unit;

/** What has to be on the shelf. */
public final class PartList {
    private final List<PartNeed> needs = new ArrayList<>();
    /** Where the axle set of an entry stands in the list. */
    private final Map<String, Integer> sets = new HashMap<>();

    private PartList() {}

    /**
     * Wanted units and parts, spoiled parts, then single-use fasteners, each in the order of the sheet. What comes inside
     * a renewed unit is not listed; one axle set covers both sides.
     */
    public static List<PartNeed> of(Assembly assembly, Wanted wanted, Selection selection) {
        Renewal renewal = Renewal.of(assembly, wanted, selection);
        PartList list = new PartList();
        for (Unit unit : renewal.units()) {
            list.add(
                    unit.id(),
                    unit.entry().id(),
                    unit.entry().name(),
                    unit.side(),
                    unit.entry().price(),
                    unit.entry().soldAsAxleSet(),
                    "renew");
        }
        for (Part part : renewal.parts()) {
            list.add(part, "renew");
        }
        for (Part part : renewal.spoiled()) {
            list.add(part, "spoiled by " + renewal.spoiler(part));
        }
        for (int index : selection.open()) {
            Joint joint = assembly.joints().get(index);
            Fastener back = renewal.fastenerBack(joint);
            if (back.singleUse()) {
                list.needs.add(new PartNeed(joint.id(), bought(joint), back.count(), null, "single-use"));
            }
        }
        return List.copyOf(list.needs);
    }

    private void add(Part part, String reason) {
        add(
                part.id(),
                part.entry().id(),
                part.entry().name(),
                part.side(),
                part.entry().price(),
                part.entry().soldAsAxleSet(),
                reason);
    }

    private void add(
            String id,
            String entry,
            String name,
            Side side,
            @Nullable BigDecimal price,
            boolean axleSet,
            String reason) {
        Integer there = sets.get(entry);
        if (axleSet && there != null) {
            PartNeed need = needs.get(there);
            needs.set(there, new PartNeed(need.id(), name + ", both sides", 1, need.price(), need.reason()));
            return;
        }
        if (axleSet) {
            sets.put(entry, needs.size());
        }
        String full = side == Side.NONE ? name : axleSet ? name + ", axle set" : name + ", " + side.word();
        needs.add(new PartNeed(id, full, 1, price, reason));
    }

    /** What is asked for at the counter: a taper is named by what it joins, and its nut is bought. */
    private static String bought(Joint joint) {
        return joint.entry().kind() == JointKind.TAPER ? joint.name() + ": its nut" : joint.name();
    }
}

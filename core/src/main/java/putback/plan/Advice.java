package putback.plan;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import putback.plan.selection.Selection;
import putback.plan.selection.Wanted;
import putback.plan.steps.Renewal;
import putback.sheet.Assembly;
import putback.sheet.Joint;
import putback.sheet.Part;
import putback.sheet.Side;
import putback.sheet.Unit;

/** What a good mechanic would mention and nobody has to follow. */
public final class Advice {
    private final Assembly assembly;
    private final Selection selection;
    private final Renewal renewal;
    private final Set<String> sentences = new LinkedHashSet<>();
    private final Map<String, Bond> bonds = new LinkedHashMap<>();

    private Advice(Assembly assembly, Wanted wanted, Selection selection) {
        this.assembly = assembly;
        this.selection = selection;
        this.renewal = Renewal.of(assembly, wanted, selection);
    }

    /**
     * One sentence for each companion that is not renewed, for each part of a pair renewed on one side only, and for each
     * unit that would come with joints closed that are closed one by one now.
     */
    public static List<String> of(Assembly assembly, Wanted wanted, Selection selection) {
        Advice advice = given(assembly, wanted, selection);
        for (Unit unit : advice.assembly.units()) {
            advice.inOnePiece(unit);
        }
        return List.copyOf(advice.sentences);
    }

    /**
     * Ids of the parts and units that usually go with what is renewed, and are not; the other side of an axle and the
     * companions, in the order of the advice.
     */
    public static Map<String, Bond> bonds(Assembly assembly, Wanted wanted, Selection selection) {
        return Collections.unmodifiableMap(given(assembly, wanted, selection).bonds);
    }

    private static Advice given(Assembly assembly, Wanted wanted, Selection selection) {
        Advice advice = new Advice(assembly, wanted, selection);
        for (Unit unit : advice.renewal.units()) {
            advice.companions(unit.entry().companions(), unit.side(), low(unit.name()));
            advice.pair(
                    unit.entry().pair(),
                    unit.side(),
                    unit.entry().id(),
                    unit.entry().name(),
                    advice.renewsOther(unit));
        }
        for (Part part : advice.all()) {
            advice.companions(part.entry().companions(), part.side(), low(part.name()));
            advice.pair(
                    part.entry().pair(),
                    part.side(),
                    part.entry().id(),
                    part.entry().name(),
                    advice.renewsOther(part));
        }
        return advice;
    }

    private boolean renewsAll(Joint joint) {
        for (int part : joint.joins()) {
            if (!renewal.renews(part)) {
                return false;
            }
        }
        return true;
    }

    private void inOnePiece(Unit unit) {
        int inside = 0;
        for (int index : selection.open()) {
            Joint joint = assembly.joints().get(index);
            inside += unit.parts().containsAll(joint.joins()) && renewsAll(joint) ? 1 : 0;
        }
        if (inside > 0) {
            sentences.add(unit.name() + ": comes in one piece, with " + inside + (inside == 1 ? " fixing" : " fixings")
                    + " fewer to close.");
        }
    }

    private List<Part> all() {
        List<Part> all = new ArrayList<>(renewal.parts());
        all.addAll(renewal.spoiled());
        return all;
    }

    private static String low(String name) {
        boolean capitals = name.length() > 1 && !Character.isLowerCase(name.charAt(1)) && name.charAt(1) != ' ';
        return name.isEmpty() || capitals ? name : name.substring(0, 1).toLowerCase(Locale.ROOT) + name.substring(1);
    }

    private void companions(List<String> ids, Side side, String with) {
        for (String id : ids) {
            Unit unit = unit(id, side);
            if (unit != null) {
                if (!renewsAll(unit)) {
                    mention(unit.id(), unit.name(), with, selection.off().containsAll(unit.parts()));
                }
                continue;
            }
            for (Part part : parts(id, side)) {
                if (!renewal.renews(part.index())) {
                    mention(part.id(), part.name(), with, selection.off().contains(part.index()));
                }
            }
        }
    }

    private void mention(String id, String companion, String with, boolean off) {
        bonds.putIfAbsent(id, Bond.COMPANION);
        sentences.add(companion + ": usually renewed with " + with + (off ? "; it is off anyway." : "."));
    }

    private @Nullable Unit unit(String id, Side side) {
        String here = side.prefix() + id;
        for (Unit unit : assembly.units()) {
            if (unit.id().equals(id) || unit.id().equals(here)) {
                return unit;
            }
        }
        return null;
    }

    private List<Part> parts(String id, Side side) {
        String sided = side.prefix() + id;
        List<Part> here = new ArrayList<>();
        List<Part> anywhere = new ArrayList<>();
        for (Part part : assembly.parts()) {
            if (part.id().equals(id) || part.id().equals(sided)) {
                here.add(part);
            }
            if (part.entry().id().equals(id)) {
                anywhere.add(part);
            }
        }
        return !here.isEmpty() || side != Side.NONE ? here : anywhere;
    }

    private boolean renewsOther(Part part) {
        for (Part other : assembly.parts()) {
            if (other.side() == part.side().other()
                    && other.entry().id().equals(part.entry().id())
                    && renewal.renews(other.index())) {
                return true;
            }
        }
        return false;
    }

    private boolean renewsOther(Unit unit) {
        for (Unit other : assembly.units()) {
            if (other.side() == unit.side().other()
                    && other.entry().id().equals(unit.entry().id())
                    && renewsAll(other)) {
                return true;
            }
        }
        return false;
    }

    private boolean renewsAll(Unit unit) {
        for (int part : unit.parts()) {
            if (!renewal.renews(part)) {
                return false;
            }
        }
        return true;
    }

    private void pair(boolean pair, Side side, String entry, String name, boolean otherToo) {
        if (pair && side != Side.NONE && !otherToo) {
            bonds.put(side.other().prefix() + entry, Bond.PAIR);
            sentences.add(name + ": renewed on the " + side.word() + " only, though it goes in pairs across the axle.");
        }
    }
}

package putback.plan.selection;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import putback.quantity.Shown;
import putback.sheet.Assembly;
import putback.sheet.Part;
import putback.sheet.Side;
import putback.sheet.Unit;

/** Turns the names a person gives into what is to be renewed. */
public final class WantedNames {
    private WantedNames() {}

    /** What was understood, or what was not. */
    public sealed interface Understood {
        record Clear(Wanted wanted) implements Understood {}

        /**
         * @param messages at least one, each naming the word and what would be right
         */
        record Unclear(List<String> messages) implements Understood {
            public Unclear {
                messages = List.copyOf(messages);
            }
        }
    }

    /**
     * Reads names such as {@code strut}, {@code left.strut} or {@code complete-strut}; what is no id may be what the part
     * is called, such as {@code Lower arm}.
     *
     * @param names parts or units, with or without their side
     * @param sides which sides a plain name means, and a name with its side has to be on; ignored for what exists once
     */
    public static Understood understand(Assembly assembly, List<String> names, Set<Side> sides) {
        Map<String, Target> known = known(assembly);
        Map<String, Target> wanted = new LinkedHashMap<>();
        List<String> messages = new ArrayList<>();
        for (String name : names) {
            List<Target> found = find(known, name, sides);
            if (isOnAnotherSide(known, name, sides)) {
                messages.add(
                        Shown.text(name) + " is not on the side that is asked for; name it without its side, or ask"
                                + " for its own side or both");
            } else if (found.isEmpty()) {
                ByName byName = new ByName(known, sides);
                found = byName.find(name);
                if (found.isEmpty()) {
                    messages.add(byName.unknown(name));
                }
            }
            for (Target target : found) {
                wanted.putIfAbsent(target.id(), target);
            }
        }
        if (names.isEmpty()) {
            messages.add("nothing to renew was named; name a part or a unit of the sheet");
        }
        return messages.isEmpty()
                ? new Understood.Clear(new Wanted(List.copyOf(wanted.values())))
                : new Understood.Unclear(messages);
    }

    private static Map<String, Target> known(Assembly assembly) {
        Map<String, Target> known = new LinkedHashMap<>();
        for (Unit unit : assembly.units()) {
            known.put(unit.id(), new Target.OfUnit(unit));
        }
        for (Part part : assembly.parts()) {
            if (!part.isBody()) {
                known.putIfAbsent(part.id(), new Target.OfPart(part));
            }
        }
        return known;
    }

    /** Whether a name carries one side while another one is asked for. */
    private static boolean isOnAnotherSide(Map<String, Target> known, String name, Set<Side> sides) {
        for (Side side : List.of(Side.LEFT, Side.RIGHT)) {
            if (name.startsWith(side.prefix()) && known.containsKey(name) && !sides.contains(side)) {
                return true;
            }
        }
        return false;
    }

    private static List<Target> find(Map<String, Target> known, String name, Set<Side> sides) {
        Target exact = known.get(name);
        if (exact != null) {
            return List.of(exact);
        }
        List<Target> found = new ArrayList<>();
        for (Side side : List.of(Side.LEFT, Side.RIGHT)) {
            Target there = known.get(side.prefix() + name);
            if (there != null && sides.contains(side)) {
                found.add(there);
            }
        }
        return found;
    }
}

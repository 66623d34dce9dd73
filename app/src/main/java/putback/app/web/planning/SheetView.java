package putback.app.web.planning;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import putback.app.web.frame.Question;
import putback.app.web.frame.Shelf;
import putback.sheet.Assembly;
import putback.sheet.Part;
import putback.sheet.Unit;
import putback.store.sheets.Read;
import putback.store.sheets.SheetReader;

/**
 * A stock sheet as a page shows it.
 *
 * @param units renewed in one piece
 * @param side the one that is chosen: left, right or both
 */
public record SheetView(
        String id,
        String title,
        boolean sided,
        int parts,
        int fixings,
        List<Choice> units,
        List<Choice> single,
        String side) {
    public SheetView {
        units = List.copyOf(units);
        single = List.copyOf(single);
    }

    /**
     * Something that can be ticked.
     *
     * @param name as a person says it
     */
    public record Choice(String id, String name, boolean ticked) {}

    /** The same with other ticks, for the ids that are said to have one. */
    public SheetView ticked(Predicate<String> isTicked) {
        return new SheetView(id, title, sided, parts, fixings, again(units, isTicked), again(single, isTicked), side);
    }

    private static List<Choice> again(List<Choice> choices, Predicate<String> isTicked) {
        List<Choice> again = new ArrayList<>();
        for (Choice choice : choices) {
            again.add(new Choice(choice.id(), choice.name(), isTicked.test(choice.id())));
        }
        return again;
    }

    /** All stock sheets that can be used here. */
    public static List<SheetView> all(Shelf shelf) {
        List<SheetView> views = new ArrayList<>();
        for (String id : shelf.stock()) {
            if (SheetReader.stock(id) instanceof Read.Sheet sheet) {
                views.add(of(new Question(id, List.of(), "both"), sheet.assembly()));
            }
        }
        return views;
    }

    /** A sheet with what is chosen on it. */
    public static SheetView of(Question chosen, Assembly assembly) {
        Map<String, Choice> units = new LinkedHashMap<>();
        for (Unit unit : assembly.units()) {
            String name = unit.entry().id();
            units.putIfAbsent(
                    name, new Choice(name, unit.entry().name(), chosen.renew().contains(name)));
        }
        Map<String, Choice> single = new LinkedHashMap<>();
        for (Part part : assembly.parts()) {
            String name = part.entry().id();
            if (!part.isBody() && !units.containsKey(name)) {
                boolean ticked = chosen.renew().contains(name);
                single.putIfAbsent(name, new Choice(name, part.entry().name(), ticked));
            }
        }
        return new SheetView(
                chosen.sheet(),
                assembly.sheet().title(),
                assembly.sided(),
                assembly.parts().size() - 1,
                assembly.joints().size(),
                List.copyOf(units.values()),
                List.copyOf(single.values()),
                chosen.side());
    }
}

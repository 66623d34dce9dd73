package putback.app.web.card;

import java.util.List;
import java.util.Map;
import java.util.Set;
import putback.app.web.planning.SheetView;

/**
 * A car that is described by choosing.
 *
 * @param values what was typed, by name
 * @param ticked what was ticked
 * @param fault what is wrong; empty for nothing
 */
public record NewCarView(List<Nearest> sheets, Map<String, String> values, Set<String> ticked, String fault) {
    /** The value of a field. */
    public String value(String name) {
        return values.getOrDefault(name, "");
    }

    /** Whether an answer is the chosen one; the first is until another is. */
    public boolean isChosen(String name, String value, boolean first) {
        String chosen = value(name);
        return chosen.isEmpty() ? first : chosen.equals(value);
    }

    /** A sheet with what is ticked of it to be renewed. */
    public SheetView ticked(int sheet) {
        return sheets.get(sheet).sheet().ticked(part -> ticked.contains(sheet + " " + part));
    }
}

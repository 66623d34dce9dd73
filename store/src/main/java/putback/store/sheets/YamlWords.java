package putback.store.sheets;

import java.util.LinkedHashMap;
import java.util.Map;
import putback.quantity.Shown;

/** Says in a mechanic's words what a YAML reader stumbles over, and what would be right. */
final class YamlWords {
    private static final Map<String, String> PLAIN = new LinkedHashMap<>();

    static {
        PLAIN.put("TAB", "a tab cannot indent here; use spaces");
        PLAIN.put(
                "mapping values are not allowed",
                "a colon cannot stand here; check the indentation, or put the text" + " in quotes");
        PLAIN.put("expected ',' or ']'", "the list before this is not closed; a comma or ] is missing");
        PLAIN.put("expected ',' or '}'", "the map before this is not closed; a comma or } is missing");
        PLAIN.put("expected <block end>", "this does not go with what stands above it; check the indentation");
        PLAIN.put("unexpected end of stream", "a quote is opened and never closed; add the closing quote");
        PLAIN.put("could not find expected ':'", "a key needs a colon and a space after it");
        PLAIN.put(
                "unknown escape character",
                "in double quotes a backslash begins a special character; use single" + " quotes");
        PLAIN.put("cannot start any token", "a text cannot begin with this character; put it in quotes");
        PLAIN.put("document separator", "three hyphens begin a new document, and a file holds one sheet; remove them");
        PLAIN.put(
                "sequence entries are not allowed",
                "a list item cannot stand here; begin the list on a line of its" + " own");
    }

    private YamlWords() {}

    static String of(String problem) {
        for (Map.Entry<String, String> known : PLAIN.entrySet()) {
            if (problem.contains(known.getKey())) {
                return known.getValue();
            }
        }
        return "this is not YAML (" + Shown.text(problem) + "); check the spelling and indentation here";
    }
}

package putback.store.backup;

import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What a backup says about itself.
 *
 * @param format of the file; 1 is the only one so far
 * @param schema of the books in it
 * @param at when it was taken, UTC
 */
public record Head(int format, int schema, String at) {
    static final int FORMAT = 1;

    String text() {
        return "format " + format + "\nschema " + schema + "\nat " + at + "\n";
    }

    /** Null for a text that is no head. */
    static @Nullable Head of(String text) {
        Map<String, String> said = new LinkedHashMap<>();
        text.lines().forEach(line -> {
            int space = line.indexOf(' ');
            if (space > 0) {
                said.put(line.substring(0, space), line.substring(space + 1));
            }
        });
        try {
            return new Head(
                    Integer.parseInt(said.getOrDefault("format", "")),
                    Integer.parseInt(said.getOrDefault("schema", "")),
                    said.getOrDefault("at", ""));
        } catch (NumberFormatException none) {
            return null;
        }
    }
}

package putback.store.overlay;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import putback.quantity.Shown;
import putback.store.sheets.KeyOrder;
import putback.store.sheets.Piece;
import putback.store.sheets.Piece.Entries;
import putback.store.sheets.Piece.Items;
import putback.store.sheets.Piece.Text;

/** Writes a sheet's data as YAML: the same data gives the same text, and every text comes back as it was. */
final class Yaml {
    /** Words that some readers of YAML take for true, false or nothing. */
    private static final Set<String> TAKEN = Set.of("y", "n", "yes", "no", "on", "off", "true", "false", "null");

    private static final String BETWEEN = " ./·°+_()%'-";

    private final StringBuilder out = new StringBuilder();

    private Yaml() {}

    static String write(Entries top) {
        Yaml yaml = new Yaml();
        for (String key : ordered(top, KeyOrder.ofSheet())) {
            Piece value = top.byKey().get(key);
            if (value instanceof Entries section && KeyOrder.sections().contains(key) && !isEmpty(section)) {
                yaml.section(key, section);
            } else if (value != null) {
                yaml.line(0, key, value);
            }
        }
        return yaml.out.toString();
    }

    private void section(String name, Entries section) {
        out.append(name).append(":\n");
        for (Map.Entry<String, Piece> entry : section.byKey().entrySet()) {
            if (!(entry.getValue() instanceof Entries values) || isEmpty(values)) {
                line(2, entry.getKey(), entry.getValue());
                continue;
            }
            out.append("  ").append(scalar(entry.getKey(), false)).append(":\n");
            for (String key : ordered(values, KeyOrder.ofEntry(name))) {
                Piece value = values.byKey().get(key);
                if (value != null) {
                    line(4, key, value);
                }
            }
        }
    }

    private void line(int indent, String key, Piece value) {
        out.append(" ".repeat(indent)).append(scalar(key, false)).append(": ");
        value(value);
        out.append('\n');
    }

    private void value(Piece piece) {
        if (piece instanceof Text text) {
            out.append(scalar(text));
        } else if (piece instanceof Items items) {
            out.append('[');
            String before = "";
            for (Piece item : items.items()) {
                out.append(before);
                value(item);
                before = ", ";
            }
            out.append(']');
        } else if (piece instanceof Entries entries) {
            out.append('{');
            String before = "";
            for (Map.Entry<String, Piece> entry : entries.byKey().entrySet()) {
                out.append(before).append(scalar(entry.getKey(), false)).append(": ");
                value(entry.getValue());
                before = ", ";
            }
            out.append('}');
        }
    }

    /** The known keys in their order, then the others as they were written. */
    private static List<String> ordered(Entries entries, List<String> known) {
        Set<String> keys = new LinkedHashSet<>(known);
        keys.retainAll(entries.byKey().keySet());
        keys.addAll(entries.byKey().keySet());
        return new ArrayList<>(keys);
    }

    private static boolean isEmpty(Entries entries) {
        return entries.byKey().isEmpty();
    }

    private static String scalar(Text text) {
        boolean word = !text.literal()
                && (text.text().equals("true")
                        || text.text().equals("false")
                        || text.text().equals("null"));
        return word ? text.text() : scalar(text.text(), text.literal());
    }

    private static String scalar(String text, boolean quoted) {
        return quoted || !isPlain(text) ? quoted(text) : text;
    }

    private static boolean isPlain(String text) {
        if (text.isEmpty() || text.endsWith(" ") || TAKEN.contains(text.toLowerCase(Locale.ROOT))) {
            return false;
        }
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            boolean inside = i > 0 && BETWEEN.indexOf(c) >= 0;
            if (!inside && !(c >= 'a' && c <= 'z') && !(c >= 'A' && c <= 'Z') && !(c >= '0' && c <= '9')) {
                return false;
            }
        }
        return true;
    }

    private static String quoted(String text) {
        StringBuilder quoted = new StringBuilder("\"");
        text.codePoints().forEach(c -> {
            if (c == '"' || c == '\\') {
                quoted.append('\\').appendCodePoint(c);
            } else if (c == '\n') {
                quoted.append("\\n");
            } else if (c == '\t') {
                quoted.append("\\t");
            } else if (Shown.isHarmless(c)) {
                quoted.appendCodePoint(c);
            } else if (c > 0xFFFF) {
                quoted.append(String.format(Locale.ROOT, "\\U%08X", c));
            } else {
                quoted.append(String.format(Locale.ROOT, "\\u%04X", c));
            }
        });
        return quoted.append('"').toString();
    }
}

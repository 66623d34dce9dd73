package putback.store.sheets;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** A piece of a sheet's text as data, whatever it says: known and unknown keys alike. Places are not part of it. */
public sealed interface Piece {
    /** What {@code null} says: not there, or not known. */
    Text NOTHING = new Text("null", false);

    /**
     * @param literal whether it is said to be text, so that {@code "true"} is not {@code true}
     */
    record Text(String text, boolean literal) implements Piece {
        private static final List<String> WORDS = List.of("true", "false", "~", "");

        public Text {
            literal = literal && (WORDS.contains(text) || text.equalsIgnoreCase("null"));
            text = literal || !(text.isEmpty() || text.equals("~") || text.equalsIgnoreCase("null")) ? text : "null";
        }

        /** A text that a person typed: never taken for nothing, true or false. */
        public static Text of(String text) {
            return new Text(text, true);
        }
    }

    record Items(List<Piece> items) implements Piece {
        public Items {
            items = List.copyOf(items);
        }
    }

    /** A map that keeps the order in which it was written. */
    record Entries(Map<String, Piece> byKey) implements Piece {
        public static final Entries NONE = new Entries(Map.of());

        public Entries {
            byKey = Collections.unmodifiableMap(new LinkedHashMap<>(byKey));
        }

        public @Nullable Piece get(String key) {
            return byKey.get(key);
        }

        /** The same with a key set, at its old place or at the end. */
        public Entries with(String key, Piece value) {
            Map<String, Piece> changed = new LinkedHashMap<>(byKey);
            changed.put(key, value);
            return new Entries(changed);
        }

        public Entries without(String key) {
            Map<String, Piece> changed = new LinkedHashMap<>(byKey);
            changed.remove(key);
            return new Entries(changed);
        }
    }

    /** Whether it says that something is not there. */
    static boolean isNothing(@Nullable Piece piece) {
        return NOTHING.equals(piece);
    }

    /** The same without places. */
    static Piece of(Node node) {
        if (node instanceof Node.Text text) {
            return new Text(text.text(), text.quoted());
        }
        if (node instanceof Node.Items items) {
            List<Piece> pieces = new ArrayList<>();
            for (Node item : items.items()) {
                pieces.add(of(item));
            }
            return new Items(pieces);
        }
        return node instanceof Node.Entries entries ? of(entries) : NOTHING;
    }

    /** The same without places. */
    static Entries of(Node.Entries entries) {
        Map<String, Piece> pieces = new LinkedHashMap<>();
        for (Node.Entry entry : entries.byKey().values()) {
            pieces.put(entry.key().text(), of(entry.value()));
        }
        return new Entries(pieces);
    }
}

package putback.store.sheets;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** A piece of YAML with its place. Scalars stay text: what they mean depends on their key. */
sealed interface Node {
    Place place();

    /** What it is, for a message. */
    String phrase();

    /**
     * @param quoted whether it stood in quotes or was a block, so that {@code "true"} is not {@code true}
     */
    record Text(Place place, String text, boolean quoted) implements Node {
        @Override
        public String phrase() {
            return isNothing() ? "nothing" : "a single value";
        }

        /** Written as nothing: left empty, {@code null} or {@code ~}. */
        boolean isNothing() {
            return !quoted && (text.isEmpty() || text.equals("~") || text.equalsIgnoreCase("null"));
        }
    }

    /** Nothing that has already removed something, and may remove more of what it comes to lie over. */
    record Taken(Place place) implements Node {
        @Override
        public String phrase() {
            return "nothing";
        }
    }

    record Items(Place place, List<Node> items) implements Node {
        public Items {
            items = List.copyOf(items);
        }

        @Override
        public String phrase() {
            return "a list";
        }
    }

    record Entry(Text key, Node value) {
        /** Where to point for this entry: at a single value itself, else at the key before it. */
        Place place() {
            return value instanceof Text text && !text.isNothing() ? text.place() : key.place();
        }
    }

    /**
     * A map.
     *
     * @param byKey in the order of the file, and not changed by anyone once it is here
     */
    record Entries(Place place, Map<String, Entry> byKey) implements Node {
        public Entries {
            byKey = Collections.unmodifiableMap(byKey);
        }

        static Entries none(Place place) {
            return new Entries(place, Map.of());
        }

        @Nullable
        Node get(String key) {
            Entry entry = byKey.get(key);
            return entry == null ? null : entry.value();
        }

        @Override
        public String phrase() {
            return "a map";
        }
    }

    static boolean isNothing(@Nullable Node node) {
        return node instanceof Taken || (node instanceof Text text && text.isNothing());
    }
}

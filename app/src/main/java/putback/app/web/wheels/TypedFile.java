package putback.app.web.wheels;

import java.util.ArrayList;
import java.util.List;
import putback.app.json.JsonWriter;

/** A file written from the fields of a form, a line for each, so that what is wrong with it is said at the field. */
final class TypedFile {
    private final StringBuilder text = new StringBuilder(1000);
    private final List<String> fields = new ArrayList<>();

    /**
     * A key under which more follows.
     *
     * @param field at which faults of the whole of it are said; empty for none
     */
    void key(int depth, String key, String field) {
        line(depth, key + ":", field);
    }

    void value(int depth, String key, String value, String field) {
        line(depth, key + ": " + quoted(value), field);
    }

    /** A value that stands without quotes: true or false. */
    void plain(int depth, String key, boolean value, String field) {
        line(depth, key + ": " + value, field);
    }

    /** One of a list. */
    void item(int depth, String value, String field) {
        line(depth, "- " + quoted(value), field);
    }

    /** The first key of a map in a list; the others are one deeper. */
    void itemKey(int depth, String key, String value, String field) {
        line(depth, "- " + key + ": " + quoted(value), field);
    }

    boolean isEmpty() {
        return fields.isEmpty();
    }

    /** The field that wrote a line, counted from 1; empty where none did. */
    String field(int line) {
        return line < 1 || line > fields.size() ? "" : fields.get(line - 1);
    }

    private void line(int depth, String words, String field) {
        text.append("  ".repeat(depth)).append(words).append('\n');
        fields.add(field);
    }

    private static String quoted(String value) {
        return new JsonWriter(value.length() + 8).value(value.strip()).toString();
    }

    @Override
    public String toString() {
        return text.toString();
    }
}

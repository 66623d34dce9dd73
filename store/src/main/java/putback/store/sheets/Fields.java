package putback.store.sheets;

import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import putback.quantity.Parsed;
import putback.quantity.Shown;
import putback.sheet.Nearest;
import putback.store.sheets.Node.Entries;
import putback.store.sheets.Node.Entry;
import putback.store.sheets.Node.Text;

/** The keys of one thing in a sheet, read by what each of them means; what is wrong is told and a default taken. */
final class Fields {
    private static final int LONGEST_TEXT = 1000;
    private static final int MOST_LISTED = 15;
    private static final String TOP = "the sheet";

    private final Entries entries;
    private final Place start;
    private final String what;
    private final Faults faults;

    private Fields(Entries entries, Place start, String what, Faults faults) {
        this.entries = entries;
        this.start = start;
        this.what = what;
        this.faults = faults;
    }

    /** The keys at the top of a sheet. */
    static Fields ofSheet(Entries top, Faults faults) {
        return of(top, top.place(), TOP, Keys.SHEET, faults);
    }

    /**
     * @param start where to point when something is missing
     * @param what the thing for messages, such as {@code joint top-nut}
     */
    static Fields of(Entries entries, Place start, String what, Set<String> keys, Faults faults) {
        for (Entry entry : entries.byKey().values()) {
            String key = entry.key().text();
            if (!keys.contains(key)) {
                String near = Nearest.to(key, keys);
                String known = keys.size() > MOST_LISTED
                        ? "; there is no such key"
                        : "; it may have " + String.join(", ", keys);
                faults.add(
                        entry.key().place(),
                        Shown.text(key) + " is not a key of " + what + (near.isEmpty() ? known : "; maybe " + near));
            }
        }
        return new Fields(entries, start, what, faults);
    }

    boolean has(String key) {
        return entries.byKey().containsKey(key);
    }

    @Nullable
    Node node(String key) {
        return entries.get(key);
    }

    /** Where to point for a key; for one that is missing, at the thing it is missing from. */
    Place at(String key) {
        Entry entry = entries.byKey().get(key);
        return entry == null ? start : entry.place();
    }

    void fault(String key, String message) {
        faults.add(at(key), naming(key) + message);
    }

    /** The same at a place somewhere under the key. */
    void fault(Place place, String key, String message) {
        faults.add(place, naming(key) + message);
    }

    /** Whether these are the keys at the top of a file, which needs no naming. */
    private boolean isTop() {
        return what.startsWith("the ");
    }

    private String naming(String key) {
        return isTop() ? key + ": " : key + " of " + what + ": ";
    }

    Amounts amounts() {
        return new Amounts(this);
    }

    Lists lists() {
        return new Lists(this);
    }

    /** The map under a key as fields of its own; null when it is not there or not a map. */
    @Nullable
    Fields map(String key, Set<String> keys) {
        Node node = node(key);
        if (node instanceof Entries under) {
            return of(under, at(key), isTop() ? key : key + " of " + what, keys, faults);
        }
        if (node != null) {
            fault(key, "this is " + node.phrase() + "; write a map with " + String.join(", ", keys));
        }
        return null;
    }

    /**
     * Whether an entry that says nothing of what it is was meant for one that does, which is told then.
     *
     * @param described ids of entries that say what they are
     */
    boolean isMisspelt(String id, Set<String> described) {
        String near = Nearest.to(id, described);
        if (!near.isEmpty()) {
            faults.add(start, what + " changes nothing that is described; perhaps you meant " + near);
        }
        return !near.isEmpty();
    }

    void require(String... keys) {
        for (String key : keys) {
            if (!has(key)) {
                faults.add(start, what + " has no " + key + ", which it needs");
            }
        }
    }

    /** The single value of a key as it stands; null when it is not there or not a single value. */
    @Nullable
    Text single(String key) {
        Node node = node(key);
        if (node instanceof Text text) {
            return text;
        }
        if (node != null) {
            fault(key, "this is " + node.phrase() + "; write a single value");
        }
        return null;
    }

    @Nullable
    String text(String key) {
        Text text = single(key);
        return text == null ? null : line(text, key);
    }

    /** One line of text; null, with the fault told, when there is nothing to show in it or too much. */
    @Nullable
    String line(Text text, String key) {
        String shown = text.text().replace('\n', ' ').replace('\t', ' ').strip();
        if (!text.isNothing() && !shown.isEmpty() && shown.length() <= LONGEST_TEXT && isHarmless(shown)) {
            return shown;
        }
        fault(
                text.place(),
                key,
                text.isNothing() || shown.isEmpty()
                        ? "there is nothing here; write a text"
                        : shown.length() > LONGEST_TEXT
                                ? "this text is longer than " + LONGEST_TEXT + " characters; shorten it"
                                : "this text has control characters in it; remove them");
        return null;
    }

    private static boolean isHarmless(String text) {
        int length = text.length();
        for (int i = 0; i < length; i++) {
            char c = text.charAt(i);
            if (c < ' ' || c >= 0x7F && c <= 0x9F) {
                return false;
            }
        }
        return true;
    }

    String text(String key, String otherwise) {
        String text = text(key);
        return text == null ? otherwise : text;
    }

    boolean flag(String key) {
        Text text = single(key);
        if (text == null) {
            return false;
        }
        boolean yes = text.text().equals("true");
        if (text.quoted() || !(yes || text.text().equals("false"))) {
            fault(
                    key,
                    "\"" + Shown.text(text.text()) + "\" is neither true nor false; write true or false, without"
                            + " quotes");
        }
        return yes;
    }

    /** One of the words given, each with its meaning. */
    <E> E word(String key, Map<String, E> words, E otherwise) {
        Text text = single(key);
        if (text == null) {
            return otherwise;
        }
        E meant = words.get(text.text());
        if (meant == null) {
            String near = Nearest.to(text.text(), words.keySet());
            fault(
                    key,
                    "\"" + Shown.text(text.text()) + "\" is not known here; write "
                            + (near.isEmpty() ? "one of: " + String.join(", ", words.keySet()) : near));
            return otherwise;
        }
        return meant;
    }

    /**
     * The value that was read under a key, or null with the fault told.
     *
     * @param possible whether the value, if there is one, can be
     * @param limit what is said when it cannot
     */
    <T> @Nullable T told(Text text, String key, Parsed<T> parsed, boolean possible, String limit) {
        if (parsed instanceof Parsed.Value<T> value && possible) {
            return value.value();
        }
        String wrong = parsed instanceof Parsed.Refused<T> refused
                ? refused.message()
                : "\"" + Shown.text(text.text()) + "\" is not possible; " + limit;
        faults.add(text.place(), naming(key) + wrong);
        return null;
    }
}

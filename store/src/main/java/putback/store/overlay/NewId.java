package putback.store.overlay;

import java.text.Normalizer;
import java.util.Collection;
import java.util.Locale;

/** Makes an id from what a person calls a thing. */
public final class NewId {
    private static final int LONGEST = 48;

    private NewId() {}

    /**
     * Lower case letters, digits and hyphens; with a number behind it where the id is taken.
     *
     * @param otherwise the id of what has no Latin letter or digit in its name
     */
    public static String of(String name, String otherwise, Collection<String> taken) {
        String plain = Normalizer.normalize(name, Normalizer.Form.NFD)
                .replaceAll("\\p{M}", "")
                .toLowerCase(Locale.ROOT)
                .replaceAll("[^a-z0-9]+", "-")
                .replaceAll("^-|-$", "");
        String id = plain.substring(0, Math.min(plain.length(), LONGEST)).replaceAll("-$", "");
        String first = id.isEmpty() ? otherwise : id;
        String free = first;
        for (int number = 2; taken.contains(free); number++) {
            free = first + "-" + number;
        }
        return free;
    }
}

package putback.sheet;

import java.util.Locale;

/** How ids become names. */
public final class Naming {
    private Naming() {}

    /** The name of an entry that gives none: its id with hyphens as spaces, the first letter large. */
    public static String fromId(String id) {
        String spaced = id.replace('-', ' ');
        return spaced.isEmpty() ? spaced : spaced.substring(0, 1).toUpperCase(Locale.ROOT) + spaced.substring(1);
    }

    /** A name with its side: {@code Strut, left}. */
    static String sided(Side side, String name) {
        return side == Side.NONE ? name : name + ", " + side.word();
    }
}

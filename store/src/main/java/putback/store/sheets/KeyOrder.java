package putback.store.sheets;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** In which order the keys of a sheet are written. */
public final class KeyOrder {
    /** What a joint says first, before its fastener. */
    private static final List<String> JOINT_FIRST = List.of("name", "joins", "kind");

    private KeyOrder() {}

    /** At the top of a sheet. */
    public static List<String> ofSheet() {
        return List.copyOf(Keys.SHEET);
    }

    /** Of an entry of a section such as {@code joints}; empty where nothing is known of it. */
    public static List<String> ofEntry(String section) {
        return switch (section) {
            case "parts" -> List.copyOf(Keys.PART);
            case "joints" -> joint();
            case "units" -> List.copyOf(Keys.UNIT);
            case "follow-ups" -> List.copyOf(Keys.FOLLOW_UP);
            case "resorts" -> List.copyOf(Keys.RESORT);
            default -> List.of();
        };
    }

    /** The maps under the top whose keys are ids. */
    public static Set<String> sections() {
        return Keys.SECTIONS;
    }

    private static List<String> joint() {
        Set<String> keys = new LinkedHashSet<>(JOINT_FIRST);
        keys.addAll(Keys.JOINT);
        return new ArrayList<>(keys);
    }
}

package putback.proof;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** What {@link MiniYaml} has read, as what the cases need. */
final class Entries {
    private Entries() {}

    static Object of(Map<?, ?> entry, String key) {
        Object value = entry.get(key);
        if (value == null) {
            throw new IllegalStateException("a data file has an entry without " + key + ": " + entry);
        }
        return value;
    }

    static int number(Object word) {
        return Integer.parseInt(String.valueOf(word));
    }

    /** Empty for nothing. */
    static List<Integer> numbers(@Nullable Object list) {
        return list == null
                ? List.of()
                : ((List<?>) list).stream().map(Entries::number).toList();
    }

    static long cost(Object answer) {
        return number(of((Map<?, ?>) answer, "cost"));
    }
}

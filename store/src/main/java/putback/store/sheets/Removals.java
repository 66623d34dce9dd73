package putback.store.sheets;

import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Where a sheet takes away what a base describes: by section and id. */
final class Removals {
    private final Map<String, Place> places = new HashMap<>();

    void add(String section, String id, Place place) {
        places.put(section + "/" + id, place);
    }

    /**
     * @param missing section and id, such as {@code parts/left.strut}
     */
    @Nullable
    Place of(String missing) {
        Place there = places.get(missing);
        int slash = missing.indexOf('/');
        return there != null || slash < 0
                ? there
                : places.get(missing.substring(0, slash + 1) + Ids.plain(missing.substring(slash + 1)));
    }
}

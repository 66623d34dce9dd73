package putback.ledger;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Which events count. One whose id was there already counts once; one that a later {@code correct} names does not count,
 * unless that correction is itself corrected later on.
 */
public final class Struck {
    private Struck() {}

    /** What counts, in the order of the ledger, without the corrections themselves. */
    public static List<Event> remaining(List<Event> events) {
        List<Event> once = once(events);
        Set<String> struck = ids(once);
        List<Event> remaining = new ArrayList<>();
        for (Event event : once) {
            if (event.did() != Did.CORRECT && !isIn(event, struck)) {
                remaining.add(event);
            }
        }
        return remaining;
    }

    /** Each event the first time it is there. */
    static List<Event> once(List<Event> events) {
        List<Event> once = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        for (Event event : events) {
            if (event.id() == null || seen.add(event.id())) {
                once.add(event);
            }
        }
        return once;
    }

    /** From the last correction to the first, since a later one may take an earlier one back. */
    private static Set<String> ids(List<Event> once) {
        Map<String, Integer> places = new LinkedHashMap<>();
        for (int i = 0; i < once.size(); i++) {
            String id = once.get(i).id();
            if (id != null) {
                places.put(id, i);
            }
        }
        Set<String> struck = new HashSet<>();
        for (int i = once.size() - 1; i >= 0; i--) {
            Event event = once.get(i);
            String wrong = event.corrects();
            if (event.did() == Did.CORRECT && wrong != null && !isIn(event, struck)) {
                Integer place = places.get(wrong);
                if (place != null && place < i) {
                    struck.add(wrong);
                }
            }
        }
        return struck;
    }

    private static boolean isIn(Event event, Set<String> ids) {
        return event.id() != null && ids.contains(event.id());
    }
}

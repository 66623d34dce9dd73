package putback.ledger.chain;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import putback.ledger.Event;

/**
 * Puts what a device sends at the end of the chain: each event once, and those of one device in the order of its own
 * running numbers, however the network has shuffled them. Clocks are not looked at. Different devices keep the order in
 * which they arrive.
 */
public final class Merge {
    private final Map<String, Event> byId = new HashMap<>();
    /** The last running number of each device. */
    private final Map<String, Long> reached = new HashMap<>();

    private final Map<String, Map<Long, Event>> numbered = new HashMap<>();
    private final List<Event> appended = new ArrayList<>();
    private final List<Event> waiting = new ArrayList<>();
    private final List<Event> known = new ArrayList<>();
    private final List<Merged.Gap> gaps = new ArrayList<>();
    private final List<Merged.Refused> refused = new ArrayList<>();

    private Merge(List<Event> stored) {
        for (Event event : stored) {
            take(event);
        }
    }

    /**
     * What is to be appended. Does nothing by itself: the same batch against the same chain gives the same answer.
     *
     * @param stored all that is in the chain, in its order
     */
    public static Merged of(List<Event> stored, List<Event> batch) {
        return new Merge(stored).merge(batch);
    }

    private Merged merge(List<Event> batch) {
        Map<String, List<Event>> queues = queues(batch);
        for (Map.Entry<String, List<Event>> queue : queues.entrySet()) {
            queue.getValue().sort(Comparator.comparingLong(Merge::seq));
        }
        Map<String, Integer> next = new HashMap<>();
        for (Event event : batch) {
            String device = event.signature().device();
            if (!isNumbered(event)) {
                unnumbered(event);
                continue;
            }
            List<Event> queue = queues.getOrDefault(device, List.of());
            int at = next.merge(device, 1, Integer::sum) - 1;
            numbered(queue.get(at), device);
        }
        findGaps();
        return new Merged(appended, waiting, known, gaps, refused);
    }

    private static Map<String, List<Event>> queues(List<Event> batch) {
        Map<String, List<Event>> queues = new TreeMap<>();
        for (Event event : batch) {
            if (isNumbered(event)) {
                queues.computeIfAbsent(event.signature().device(), none -> new ArrayList<>())
                        .add(event);
            }
        }
        return queues;
    }

    private static boolean isNumbered(Event event) {
        return event.signature().seq() != null && !event.signature().device().isEmpty();
    }

    private static long seq(Event event) {
        Long seq = event.signature().seq();
        return seq == null ? 0 : seq;
    }

    private void take(Event event) {
        if (event.id() != null) {
            byId.put(event.id(), event);
        }
        if (isNumbered(event)) {
            String device = event.signature().device();
            reached.merge(device, seq(event), Math::max);
            numbered.computeIfAbsent(device, none -> new HashMap<>()).put(seq(event), event);
        }
    }

    private void unnumbered(Event event) {
        if (!isKnown(event)) {
            append(event);
        }
    }

    private void append(Event event) {
        appended.add(event);
        take(event);
    }

    /** Whether it is there, or its id is that of another one. */
    private boolean isKnown(Event event) {
        Event there = event.id() == null ? null : byId.get(event.id());
        if (there == null) {
            return false;
        }
        if (there.equals(event)) {
            known.add(event);
        } else {
            refuse(event, "its id is that of another event");
        }
        return true;
    }

    private void numbered(Event event, String device) {
        if (isKnown(event)) {
            return;
        }
        long due = reached.getOrDefault(device, 0L) + 1;
        if (seq(event) == due) {
            append(event);
        } else if (seq(event) > due) {
            wait(event);
        } else if (event.equals(numberedAs(event, device))) {
            known.add(event);
        } else {
            refuse(event, "number " + seq(event) + " of device " + device + " is that of another event");
        }
    }

    private @Nullable Event numberedAs(Event event, String device) {
        return numbered.getOrDefault(device, Map.of()).get(seq(event));
    }

    private void wait(Event event) {
        if (waiting.contains(event)) {
            known.add(event);
        } else {
            waiting.add(event);
        }
    }

    private void refuse(Event event, String because) {
        refused.add(new Merged.Refused(event.id(), because));
    }

    /** Of each device the numbers between what has arrived. */
    private void findGaps() {
        Map<String, Long> last = new TreeMap<>(reached);
        for (Event event : waiting) {
            String device = event.signature().device();
            long before = last.getOrDefault(device, 0L);
            if (seq(event) > before + 1) {
                gaps.add(new Merged.Gap(device, before + 1, seq(event) - 1));
            }
            last.put(device, Math.max(before, seq(event)));
        }
    }
}

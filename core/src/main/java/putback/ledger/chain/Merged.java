package putback.ledger.chain;

import java.util.List;
import org.jspecify.annotations.Nullable;
import putback.ledger.Event;

/**
 * What becomes of a batch that a device sends.
 *
 * @param appended what goes to the end of the chain, in this order
 * @param waiting what comes after a gap, and is sent again once the gap is filled
 * @param known what is in the chain already, or twice in the batch
 * @param gaps what is missing before it can go on
 * @param refused what can never be appended, and why
 */
public record Merged(
        List<Event> appended, List<Event> waiting, List<Event> known, List<Gap> gaps, List<Refused> refused) {
    public Merged {
        appended = List.copyOf(appended);
        waiting = List.copyOf(waiting);
        known = List.copyOf(known);
        gaps = List.copyOf(gaps);
        refused = List.copyOf(refused);
    }

    /**
     * Running numbers of a device that never arrived.
     *
     * @param from the first of them
     * @param to the last of them
     */
    public record Gap(String device, long from, long to) {}

    /**
     * @param id of the event; null where it has none
     */
    public record Refused(@Nullable String id, String because) {}
}

package putback.store.books;

import java.util.ArrayList;
import java.util.List;
import putback.ledger.Event;
import putback.ledger.chain.Chain;

/**
 * The chain of one job as far as it is known.
 *
 * @param events from the first to the last
 * @param hash of the last; of the chain's start where there is none
 */
record JobChain(List<Event> events, String hash) {
    static JobChain empty(String job) {
        return new JobChain(List.of(), Chain.start(job));
    }

    /** With these at its end, the last of them with this hash. */
    JobChain with(List<Event> more, String lastHash) {
        List<Event> all = new ArrayList<>(events.size() + more.size());
        all.addAll(events);
        all.addAll(more);
        return new JobChain(all, lastHash);
    }
}

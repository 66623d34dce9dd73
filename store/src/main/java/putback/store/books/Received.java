package putback.store.books;

import putback.ledger.chain.Merged;

/** What became of a batch of events. */
public sealed interface Received {
    /**
     * What could be appended is on disk.
     *
     * @param last number of the chain's last event
     */
    record Kept(Merged merged, int last) implements Received {}

    /** Nothing was written: this garage has no such job. */
    record NoSuchJob() implements Received {}
}

package putback.ledger.chain;

import org.jspecify.annotations.Nullable;

/** Whether a chain holds. */
public sealed interface Verdict {
    /**
     * Every link holds.
     *
     * @param links how many there are
     * @param hash of the last one; of the start where there is none
     */
    record Whole(int links, String hash) implements Verdict {}

    /**
     * The first link that does not hold.
     *
     * @param number from 1
     * @param id of its event; null where it has none
     * @param differs what is wrong there
     */
    record Broken(int number, @Nullable String id, String differs) implements Verdict {}
}

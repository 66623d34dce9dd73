package putback.store.books;

/**
 * What somebody said to a price. Never edited: another word is another approval.
 *
 * @param who said it
 * @param how on the phone, here, in writing, by the link
 * @param yes or no
 * @param upTo ceiling as a decimal; empty for none named
 * @param total the price it was said to
 * @param words as they were said
 * @param takenBy who wrote it down
 * @param estimate id of the estimate it was said to; empty for none
 */
public record Approval(
        String id,
        String job,
        String who,
        String how,
        String at,
        boolean yes,
        String upTo,
        String total,
        String words,
        String takenBy,
        String estimate) {}

package putback.store.books;

import putback.job.Stage;

/**
 * A job as a list shows it.
 *
 * @param car as one calls it
 * @param customer name; empty when not known
 * @param partsMissing how many of its parts have not arrived
 */
public record JobLine(
        String id,
        String number,
        String car,
        String customer,
        String phone,
        String complaint,
        Stage stage,
        String openedAt,
        String promisedAt,
        int partsMissing) {}

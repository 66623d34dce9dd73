package putback.store.books;

import putback.labour.price.Observed;

/**
 * One thing that a job taught.
 *
 * @param family id of the sheet at the bottom of those by which the car is described, such as front-strut
 */
public record Lesson(String family, Observed seen) {}

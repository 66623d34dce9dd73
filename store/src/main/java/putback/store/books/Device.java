package putback.store.books;

/**
 * A phone or tablet that was paired with the garage.
 *
 * @param pairedBy whose name and password it was paired with
 * @param endedAt empty as long as it is in use
 */
public record Device(String id, String name, String pairedAt, String pairedBy, String endedAt) {}

package putback.store.books;

/**
 * Who pays.
 *
 * @param id empty for one that is not kept yet
 * @param version of what was read
 */
public record Customer(String id, String name, String phone, String email, String address, String note, int version) {}

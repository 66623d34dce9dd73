package putback.store.books;

/**
 * A drive before or after the work.
 *
 * @param moment before or after
 * @param conditions in which it was driven
 */
public record RoadTest(String id, String job, String moment, String conditions, String found, String at, String by) {}

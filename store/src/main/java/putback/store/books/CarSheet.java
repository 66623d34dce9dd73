package putback.store.books;

/**
 * What differs on a car from its stock sheet, as it was at one time.
 *
 * @param number from 1; the greatest is the one that holds
 * @param text a sheet in YAML
 */
public record CarSheet(String car, int number, String text, String at, String by, String why) {}

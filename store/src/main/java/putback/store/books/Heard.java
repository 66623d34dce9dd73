package putback.store.books;

/**
 * When a device that works at a car was last heard of.
 *
 * @param by who works with it; empty where nobody said
 * @param unsent events that it held back then
 * @param aheadSeconds by how much its clock is ahead of this garage's; below 0 when it is behind
 */
public record Heard(String job, String device, String by, String at, int unsent, long aheadSeconds) {}

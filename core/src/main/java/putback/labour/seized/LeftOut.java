package putback.labour.seized;

/**
 * An attempt that is not in the row.
 *
 * @param because why not, as half a sentence
 * @param banned whether it would do harm here, and not only cost too much or answer nothing
 */
public record LeftOut(Attempt attempt, String because, boolean banned) {}

package putback.store.books;

/** What came of saving something that others may have changed meanwhile. */
public sealed interface Saved<T> {
    /** It is on disk. */
    record Done<T>(T value) implements Saved<T> {}

    /**
     * Somebody else saved it since it was read; nothing was written.
     *
     * @param theirs as it is now
     */
    record Overtaken<T>(T theirs) implements Saved<T> {}

    /** It is no longer there. */
    record Gone<T>() implements Saved<T> {}
}

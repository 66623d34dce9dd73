package putback.store.photos;

/** A photo that was kept, or why it was not. */
public sealed interface Added {

    /** It is on disk. */
    record Kept(Photo photo) implements Added {}

    /** What was wrong with it, in words. */
    record Refused(String said) implements Added {}
}

package putback.store.photos;

/** A picture without all that is not picture, or why there is none. */
public sealed interface Stripped {

    /**
     * What is kept.
     *
     * @param file its pixels are those that came, bit by bit
     */
    record Picture(PictureType type, byte[] file) implements Stripped {}

    /** What was wrong with it, in words. */
    record Refused(String said) implements Stripped {}
}

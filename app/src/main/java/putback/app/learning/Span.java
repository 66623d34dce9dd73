package putback.app.learning;

/** Time that was worked, piece by piece; once a piece of it is not known, the whole is not. */
final class Span {
    private static final long HUNDREDTH = 600;

    private long millis;
    private boolean known = true;

    /**
     * @param piece in milliseconds; below 0 for one that nobody knows
     */
    void add(long piece) {
        millis += Math.max(0, piece);
        known &= piece >= 0;
    }

    void add(Span other) {
        millis += other.millis;
        known &= other.known;
    }

    void forget() {
        known = false;
    }

    /** Minutes to the hundredth; 0 where they are not known. */
    double minutes() {
        long hundredths = (millis + HUNDREDTH / 2) / HUNDREDTH;
        return known ? hundredths / 100.0 : 0;
    }
}

package putback.store.photos;

/** The least of an EXIF block: which way is up, and nothing else. */
final class Orientation {
    private static final int LENGTH = 26;
    private static final int VALUE_AT = 18;

    private Orientation() {}

    /**
     * A block of 26 bytes, big end first, with one entry.
     *
     * @param orientation 2 to 8, as in tag 0x0112
     */
    static byte[] block(int orientation) {
        byte[] block = new byte[LENGTH];
        byte[] start = {'M', 'M', 0, 42, 0, 0, 0, 8, 0, 1, 0x01, 0x12, 0, 3, 0, 0, 0, 1};
        System.arraycopy(start, 0, block, 0, start.length);
        block[VALUE_AT + 1] = (byte) orientation;
        return block;
    }
}

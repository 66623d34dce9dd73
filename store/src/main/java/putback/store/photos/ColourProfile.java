package putback.store.photos;

import java.io.ByteArrayOutputStream;
import java.util.TreeMap;

/**
 * A colour profile in the pieces in which a JPEG carries it; kept only when they make up one that is as long as it says.
 *
 * <p>Source: ICC.1, annex B (embedding in JPEG) and 7.2 (header).
 */
final class ColourProfile {
    private static final byte[] NAME = PictureType.ascii("ICC_PROFILE\0");
    private static final byte[] SIGNATURE = PictureType.ascii("acsp");
    private static final int SIGNATURE_AT = 36;
    private static final int PIECE = 65_000;

    private final TreeMap<Integer, byte[]> pieces = new TreeMap<>();
    private int announced;
    private boolean doubtful;

    /** Takes a segment; one that is something else is passed over. */
    void add(byte[] file, int body, int end) {
        int head = NAME.length + 2;
        if (end - body <= head || !PictureType.startsWith(file, body, NAME)) {
            return;
        }
        int number = file[body + NAME.length] & 0xff;
        announced = file[body + NAME.length + 1] & 0xff;
        byte[] piece = java.util.Arrays.copyOfRange(file, body + head, end);
        doubtful |= pieces.put(number, piece) != null;
    }

    /** Writes it once, when it is whole. */
    void write(ByteArrayOutputStream kept) {
        if (pieces.isEmpty()) {
            return;
        }
        byte[] whole = joined();
        boolean ordered = pieces.firstKey() == 1 && pieces.lastKey() == announced && pieces.size() == announced;
        if (!doubtful && ordered && isProfile(whole)) {
            int count = (whole.length + PIECE - 1) / PIECE;
            for (int i = 0; i < count; i++) {
                int from = i * PIECE;
                segment(kept, whole, from, Math.min(PIECE, whole.length - from), i + 1, count);
            }
        }
        pieces.clear();
    }

    private byte[] joined() {
        ByteArrayOutputStream whole = new ByteArrayOutputStream();
        pieces.values().forEach(whole::writeBytes);
        return whole.toByteArray();
    }

    static boolean isProfile(byte[] whole) {
        return PictureType.startsWith(whole, SIGNATURE_AT, SIGNATURE)
                && java.nio.ByteBuffer.wrap(whole).getInt(0) == whole.length;
    }

    private static void segment(ByteArrayOutputStream kept, byte[] whole, int from, int length, int number, int count) {
        int size = 2 + NAME.length + 2 + length;
        kept.write(0xff);
        kept.write(0xe2);
        kept.write(size >> 8);
        kept.write(size & 0xff);
        kept.writeBytes(NAME);
        kept.write(number);
        kept.write(count);
        kept.write(whole, from, length);
    }
}

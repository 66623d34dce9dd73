package putback.store.durability;

import java.util.Arrays;

/** A file's bytes, growing as it is written to. */
final class FileContent {
    private byte[] room;
    private int length;

    FileContent(byte[] bytes) {
        room = bytes.clone();
        length = bytes.length;
    }

    FileContent copy() {
        return new FileContent(bytes());
    }

    byte[] bytes() {
        return Arrays.copyOf(room, length);
    }

    /** Puts part of some bytes where it belongs. */
    void write(int at, byte[] bytes, int from, int to) {
        int end = at + to - from;
        if (end > room.length) {
            room = Arrays.copyOf(room, Math.max(end, 2 * room.length));
        }
        System.arraycopy(bytes, from, room, at, to - from);
        length = Math.max(length, end);
    }

    void truncate(int to) {
        if (to < length) {
            Arrays.fill(room, to, length, (byte) 0);
        }
        if (to > room.length) {
            room = Arrays.copyOf(room, to);
        }
        length = to;
    }
}

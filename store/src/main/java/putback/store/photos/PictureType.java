package putback.store.photos;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/** Kinds of pictures, told by how their content starts; names and what a sender claims count for nothing. */
public enum PictureType {
    JPEG("image/jpeg"),
    PNG("image/png"),
    WEBP("image/webp"),
    HEIC("image/heic");

    private static final byte[] PNG_START = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n'};
    private static final int BRAND = 8;

    private final String media;

    PictureType(String media) {
        this.media = media;
    }

    /** As browsers call it. */
    public String media() {
        return media;
    }

    /** What the bytes are; null for anything else. */
    static @Nullable PictureType of(byte[] file) {
        if (startsWith(file, 0, new byte[] {(byte) 0xff, (byte) 0xd8, (byte) 0xff})) {
            return JPEG;
        }
        if (startsWith(file, 0, PNG_START)) {
            return PNG;
        }
        if (startsWith(file, 0, ascii("RIFF")) && startsWith(file, BRAND, ascii("WEBP"))) {
            return WEBP;
        }
        if (startsWith(file, 4, ascii("ftyp"))) {
            for (String brand : new String[] {"heic", "heix", "hevc", "hevx", "heim", "heis", "mif1", "msf1", "avif"}) {
                if (startsWith(file, BRAND, ascii(brand))) {
                    return HEIC;
                }
            }
        }
        return null;
    }

    static byte[] ascii(String text) {
        return text.getBytes(StandardCharsets.US_ASCII);
    }

    static boolean startsWith(byte[] file, int at, byte[] start) {
        return at + start.length <= file.length && Arrays.equals(file, at, at + start.length, start, 0, start.length);
    }
}

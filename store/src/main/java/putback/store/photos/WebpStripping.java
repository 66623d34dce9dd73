package putback.store.photos;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;

/**
 * A WebP, chunk by chunk: the picture, its transparency and a whole colour profile go through.
 *
 * <p>Source: RFC 9649, section 2.
 */
final class WebpStripping {
    private static final int HEAD = 12;
    private static final int CHUNK_HEAD = 8;
    private static final int EXTENDED_LENGTH = 10;
    private static final int HAS_EXIF = 0x08;
    private static final int HAS_XMP = 0x04;
    private static final int HAS_PROFILE = 0x20;
    private static final Set<String> SHOWN = Set.of("VP8X", "ICCP", "ALPH", "VP8 ", "VP8L");
    private static final Set<String> MOVING = Set.of("ANIM", "ANMF");

    private final byte[] file;
    private final ByteBuffer words;
    private final Map<String, byte[]> chunks = new LinkedHashMap<>();

    WebpStripping(byte[] file) {
        this.file = file;
        words = ByteBuffer.wrap(file).order(ByteOrder.LITTLE_ENDIAN);
    }

    byte[] run(int orientation) throws Malformed {
        read();
        checkPicture();
        byte[] profile = chunks.get("ICCP");
        if (profile != null && !ColourProfile.isProfile(profile)) {
            chunks.remove("ICCP");
        }
        byte[] extended = chunks.get("VP8X");
        if (extended != null) {
            int flags = extended[0] & ~(HAS_EXIF | HAS_XMP | HAS_PROFILE);
            flags |= orientation > 1 ? HAS_EXIF : 0;
            flags |= chunks.containsKey("ICCP") ? HAS_PROFILE : 0;
            extended[0] = (byte) flags;
            if (orientation > 1) {
                chunks.put("EXIF", Orientation.block(orientation));
            }
        }
        return written();
    }

    private void read() throws Malformed {
        long end = 8L + Integer.toUnsignedLong(words.getInt(4));
        if (end > file.length) {
            throw Malformed.cutOff();
        }
        int at = HEAD;
        while (at < end) {
            if (end - at < CHUNK_HEAD) {
                throw new Malformed("it is damaged at byte " + at);
            }
            String type = new String(file, at, 4, java.nio.charset.StandardCharsets.ISO_8859_1);
            long length = Integer.toUnsignedLong(words.getInt(at + 4));
            if (length > end - at - CHUNK_HEAD) {
                throw new Malformed("it is damaged at byte " + at);
            }
            take(type, at + CHUNK_HEAD, (int) length);
            at += CHUNK_HEAD + (int) (length + (length & 1));
        }
    }

    private void take(String type, int from, int length) throws Malformed {
        if (MOVING.contains(type)) {
            throw new Malformed("it moves, and only still pictures are kept");
        }
        if (SHOWN.contains(type) && chunks.put(type, Arrays.copyOfRange(file, from, from + length)) != null) {
            throw new Malformed("there is more than one picture in it");
        }
    }

    private void checkPicture() throws Malformed {
        byte[] lossy = chunks.get("VP8 ");
        byte[] lossless = chunks.get("VP8L");
        byte[] extended = chunks.get("VP8X");
        byte[] picture = lossy == null ? lossless : lossy;
        if (picture == null || (lossy != null && lossless != null)) {
            throw new Malformed("there is not one picture in it");
        }
        boolean started = lossy == null
                ? picture.length > 5 && picture[0] == 0x2f
                : picture.length > 10 && picture[3] == (byte) 0x9d && picture[4] == 0x01 && picture[5] == 0x2a;
        if (!started || (extended != null && extended.length != EXTENDED_LENGTH)) {
            throw new Malformed("its picture is damaged");
        }
    }

    private byte[] written() {
        ByteArrayOutputStream body = new ByteArrayOutputStream();
        body.writeBytes(PictureType.ascii("WEBP"));
        chunks.forEach((type, bytes) -> {
            body.writeBytes(PictureType.ascii(type));
            body.writeBytes(length(bytes.length));
            body.writeBytes(bytes);
            if ((bytes.length & 1) == 1) {
                body.write(0);
            }
        });
        ByteArrayOutputStream kept = new ByteArrayOutputStream();
        kept.writeBytes(PictureType.ascii("RIFF"));
        kept.writeBytes(length(body.size()));
        kept.writeBytes(body.toByteArray());
        return kept.toByteArray();
    }

    private static byte[] length(int value) {
        return ByteBuffer.allocate(4)
                .order(ByteOrder.LITTLE_ENDIAN)
                .putInt(value)
                .array();
    }
}

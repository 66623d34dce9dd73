package putback.store.photos;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.util.Set;
import java.util.zip.CRC32;

/**
 * A PNG, chunk by chunk: only those by which it is shown go through, each with its checksum right.
 *
 * <p>Source: PNG, third edition, clauses 5 and 11.
 */
final class PngStripping {
    private static final int SIGNATURE = 8;
    private static final int AROUND = 12;
    private static final Set<String> SHOWN = Set.of(
            "IHDR", "PLTE", "IDAT", "IEND", "tRNS", "gAMA", "cHRM", "sRGB", "iCCP", "sBIT", "bKGD", "pHYs", "cICP");

    private final byte[] file;
    private final ByteBuffer words;
    private final ByteArrayOutputStream kept = new ByteArrayOutputStream();

    PngStripping(byte[] file) {
        this.file = file;
        words = ByteBuffer.wrap(file);
    }

    byte[] run(int orientation) throws Malformed {
        kept.write(file, 0, SIGNATURE);
        int at = SIGNATURE;
        boolean picture = false;
        boolean turned = orientation <= 1;
        while (true) {
            String type = type(at);
            int length = length(at);
            if ((at == SIGNATURE) != type.equals("IHDR")) {
                throw new Malformed("its head is not where it belongs");
            }
            if (type.equals("IDAT") && !turned) {
                chunk("eXIf", Orientation.block(orientation));
                turned = true;
            }
            if (SHOWN.contains(type)) {
                kept.write(file, at, AROUND + length);
            } else if (Character.isUpperCase(type.charAt(0))) {
                throw new Malformed("it has a part that is not known here");
            }
            picture |= type.equals("IDAT");
            if (type.equals("IEND")) {
                break;
            }
            at += AROUND + length;
        }
        if (!picture) {
            throw new Malformed("there is no picture in it");
        }
        return kept.toByteArray();
    }

    private String type(int at) throws Malformed {
        if (at + AROUND > file.length) {
            throw Malformed.cutOff();
        }
        return new String(file, at + 4, 4, java.nio.charset.StandardCharsets.US_ASCII);
    }

    private int length(int at) throws Malformed {
        int length = words.getInt(at);
        if (length < 0 || length > file.length - at - AROUND) {
            throw Malformed.cutOff();
        }
        CRC32 sum = new CRC32();
        sum.update(file, at + 4, length + 4);
        if ((int) sum.getValue() != words.getInt(at + 8 + length)) {
            throw new Malformed("it is damaged at byte " + at);
        }
        return length;
    }

    private void chunk(String type, byte[] body) {
        byte[] named = ByteBuffer.allocate(4 + body.length)
                .put(PictureType.ascii(type))
                .put(body)
                .array();
        CRC32 sum = new CRC32();
        sum.update(named);
        kept.writeBytes(ByteBuffer.allocate(named.length + 8)
                .putInt(body.length)
                .put(named)
                .putInt((int) sum.getValue())
                .array());
    }
}

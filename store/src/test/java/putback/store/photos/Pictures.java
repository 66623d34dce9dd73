package putback.store.photos;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.zip.CRC32;
import javax.imageio.ImageIO;

/** Drawn pictures that tell where they were taken, in every way that they can. */
final class Pictures {
    /** Degrees, minutes and seconds as EXIF writes them; what must never be found in what is kept. */
    static final byte[] LATITUDE = rationals(48, 1, 51, 1, 298_765, 10_000);

    static final byte[] LONGITUDE = rationals(2, 1, 17, 1, 401_234, 10_000);
    static final String PLACE = "48.858299N 2.294539E";
    private static final int ON_ITS_SIDE = 6;

    private Pictures() {}

    private static byte[] rationals(int... values) {
        ByteBuffer bytes = ByteBuffer.allocate(4 * values.length);
        for (int value : values) {
            bytes.putInt(value);
        }
        return bytes.array();
    }

    /** An EXIF block: which way is up, a place, a camera. */
    static byte[] exif() {
        ByteBuffer tiff = ByteBuffer.allocate(200);
        tiff.put(ascii("MM")).putShort((short) 42).putInt(8);
        tiff.putShort((short) 2);
        tiff.putShort((short) 0x0112)
                .putShort((short) 3)
                .putInt(1)
                .putShort((short) ON_ITS_SIDE)
                .putShort((short) 0);
        tiff.putShort((short) 0x8825).putShort((short) 4).putInt(1).putInt(38);
        tiff.putInt(0);
        tiff.putShort((short) 4);
        tiff.putShort((short) 1).putShort((short) 2).putInt(2).put(ascii("N\0\0\0"));
        tiff.putShort((short) 2).putShort((short) 5).putInt(3).putInt(92);
        tiff.putShort((short) 3).putShort((short) 2).putInt(2).put(ascii("E\0\0\0"));
        tiff.putShort((short) 4).putShort((short) 5).putInt(3).putInt(116);
        tiff.putInt(0);
        tiff.put(LATITUDE).put(LONGITUDE);
        return java.util.Arrays.copyOf(tiff.array(), tiff.position());
    }

    static byte[] jpeg() {
        byte[] plain = drawn("jpg");
        ByteArrayOutputStream file = new ByteArrayOutputStream();
        file.write(plain, 0, 2);
        segment(file, 0xe1, join(ascii("Exif\0\0"), exif()));
        segment(file, 0xe1, ascii("http://ns.adobe.com/xap/1.0/\0<x:xmpmeta>" + PLACE + "</x:xmpmeta>"));
        segment(file, 0xed, ascii("Photoshop 3.0\0" + PLACE));
        segment(file, 0xfe, ascii(PLACE));
        file.write(plain, 2, plain.length - 2);
        file.writeBytes(ascii("ftypmp42 a film with a place " + PLACE));
        file.writeBytes(LATITUDE);
        return file.toByteArray();
    }

    private static void segment(ByteArrayOutputStream file, int marker, byte[] body) {
        file.write(0xff);
        file.write(marker);
        file.write((body.length + 2) >> 8);
        file.write((body.length + 2) & 0xff);
        file.writeBytes(body);
    }

    static byte[] png() {
        byte[] plain = drawn("png");
        int afterHead = 8 + 25;
        ByteArrayOutputStream file = new ByteArrayOutputStream();
        file.write(plain, 0, afterHead);
        chunk(file, "eXIf", exif());
        chunk(file, "tEXt", ascii("Comment\0" + PLACE));
        chunk(file, "iTXt", ascii("XML:com.adobe.xmp\0\0\0\0\0" + PLACE));
        file.write(plain, afterHead, plain.length - afterHead);
        file.writeBytes(ascii(PLACE));
        return file.toByteArray();
    }

    private static void chunk(ByteArrayOutputStream file, String type, byte[] body) {
        byte[] named = join(ascii(type), body);
        CRC32 sum = new CRC32();
        sum.update(named);
        file.writeBytes(rationals(body.length));
        file.writeBytes(named);
        file.writeBytes(rationals((int) sum.getValue()));
    }

    /** One pixel, lossless; no writer of this kind comes with Java. */
    static byte[] webp() {
        byte[] pixel = Base64.getDecoder().decode("LwAAABAHEBERiIj+BwA=");
        ByteArrayOutputStream body = new ByteArrayOutputStream();
        body.writeBytes(ascii("WEBP"));
        part(body, "VP8X", new byte[] {0x0c, 0, 0, 0, 0, 0, 0, 0, 0, 0});
        part(body, "VP8L", java.util.Arrays.copyOf(pixel, 13));
        part(body, "EXIF", exif());
        part(body, "XMP ", ascii("<x:xmpmeta>" + PLACE + "</x:xmpmeta>"));
        ByteArrayOutputStream file = new ByteArrayOutputStream();
        part(file, "RIFF", body.toByteArray());
        return file.toByteArray();
    }

    private static void part(ByteArrayOutputStream file, String type, byte[] body) {
        file.writeBytes(ascii(type));
        file.writeBytes(ByteBuffer.allocate(4)
                .order(ByteOrder.LITTLE_ENDIAN)
                .putInt(body.length)
                .array());
        file.writeBytes(body);
        if ((body.length & 1) == 1) {
            file.write(0);
        }
    }

    static byte[] drawn(String kind) {
        BufferedImage image = new BufferedImage(48, 32, BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = image.createGraphics();
        graphics.setColor(Color.ORANGE);
        graphics.fillOval(4, 4, 30, 20);
        graphics.dispose();
        ByteArrayOutputStream file = new ByteArrayOutputStream();
        try {
            ImageIO.write(image, kind, file);
        } catch (IOException never) {
            throw new UncheckedIOException(never);
        }
        return file.toByteArray();
    }

    static byte[] ascii(String text) {
        return text.getBytes(StandardCharsets.ISO_8859_1);
    }

    static byte[] join(byte[] one, byte[] other) {
        byte[] both = java.util.Arrays.copyOf(one, one.length + other.length);
        System.arraycopy(other, 0, both, one.length, other.length);
        return both;
    }

    /** Whether anything of the place is still in there. */
    static boolean tell(byte[] file) {
        String bytes = new String(file, StandardCharsets.ISO_8859_1);
        return contains(bytes, LATITUDE, 0, 24)
                || contains(bytes, LONGITUDE, 0, 24)
                || contains(bytes, LATITUDE, 16, 24)
                || contains(bytes, LONGITUDE, 16, 24)
                || bytes.contains(PLACE)
                || bytes.contains("48.858299N");
    }

    private static boolean contains(String bytes, byte[] part, int from, int to) {
        return bytes.contains(new String(part, from, to - from, StandardCharsets.ISO_8859_1));
    }
}

package putback.store.photos;

import java.io.ByteArrayOutputStream;

/**
 * A JPEG, segment by segment. Tables and scans go through once their lengths are right, so that nothing can hide in them by a wrong length;
 * of the rest only a short JFIF head, a whole colour profile and the colour transform do. What follows the end is dropped: some phones put
 * a film there.
 *
 * <p>Source: ITU-T T.81, annex B.
 */
final class JpegStripping {
    private static final int START = 0xd8;
    private static final int END = 0xd9;
    private static final int SCAN = 0xda;
    private static final int JFIF_LENGTH = 14;
    private static final byte[] JFIF = PictureType.ascii("JFIF\0");
    private static final byte[] ADOBE = PictureType.ascii("Adobe");
    private static final byte[] EXIF = PictureType.ascii("Exif\0\0");

    private final byte[] file;
    private final ByteArrayOutputStream kept = new ByteArrayOutputStream();
    private final ColourProfile profile = new ColourProfile();
    private int at;
    private int orientation;
    private boolean headWritten;
    private boolean framed;
    private boolean scanned;

    JpegStripping(byte[] file) {
        this.file = file;
    }

    byte[] run(int turned) throws Malformed {
        orientation = turned;
        at = 2;
        marker(START);
        while (true) {
            int marker = nextMarker();
            if (marker == END) {
                break;
            }
            segment(marker);
        }
        if (!scanned) {
            throw new Malformed("there is no picture in it");
        }
        marker(END);
        return kept.toByteArray();
    }

    private void marker(int marker) {
        kept.write(0xff);
        kept.write(marker);
    }

    private int nextMarker() throws Malformed {
        if (byteAt(at) != 0xff) {
            throw new Malformed("it is damaged at byte " + at);
        }
        while (byteAt(at) == 0xff) {
            at++;
        }
        return byteAt(at++);
    }

    private int byteAt(int index) throws Malformed {
        if (index >= file.length) {
            throw Malformed.cutOff();
        }
        return file[index] & 0xff;
    }

    private void segment(int marker) throws Malformed {
        int length = byteAt(at) << 8 | byteAt(at + 1);
        int body = at + 2;
        int end = at + length;
        if (length < 2) {
            throw new Malformed("it is damaged at byte " + at);
        }
        byteAt(end);
        if (marker >= 0xe0 && marker <= 0xef) {
            application(marker, body, end);
        } else if (marker != 0xfe) {
            JpegTables.check(file, marker, body, end);
            picture(marker, end);
        }
        at = end;
        if (marker == SCAN) {
            scan();
        }
    }

    private void picture(int marker, int end) throws Malformed {
        head();
        if (JpegTables.isFrame(marker)) {
            if (framed) {
                throw new Malformed("there is more than one picture in it");
            }
            framed = true;
        }
        if (marker == SCAN && !framed) {
            throw new Malformed("its picture has no size");
        }
        marker(marker);
        kept.write(file, at, end - at);
    }

    private void application(int marker, int body, int end) {
        if (marker == 0xe0 && PictureType.startsWith(file, body, JFIF) && end - body >= JFIF_LENGTH && !headWritten) {
            marker(marker);
            kept.write(0);
            kept.write(JFIF_LENGTH + 2);
            kept.write(file, body, JFIF_LENGTH - 2);
            kept.write(0);
            kept.write(0);
            headWritten = true;
        } else if (marker == 0xe2) {
            profile.add(file, body, end);
        } else if (marker == 0xee && PictureType.startsWith(file, body, ADOBE) && end - body == 12) {
            marker(marker);
            kept.write(file, at, end - at);
        }
    }

    /** What stands before the picture's own tables: which way is up, and its colours. */
    private void head() {
        if (orientation > 1) {
            byte[] block = Orientation.block(orientation);
            marker(0xe1);
            kept.write(0);
            kept.write(2 + EXIF.length + block.length);
            kept.writeBytes(EXIF);
            kept.writeBytes(block);
            orientation = 0;
        }
        profile.write(kept);
        headWritten = true;
    }

    /** Coded data run to the next marker that is not part of them. */
    private void scan() throws Malformed {
        int from = at;
        while (true) {
            if (byteAt(at) == 0xff) {
                int next = byteAt(at + 1);
                if (next != 0 && (next < 0xd0 || next > 0xd7)) {
                    break;
                }
                at++;
            }
            at++;
        }
        if (at == from) {
            throw new Malformed("there is nothing in its picture");
        }
        kept.write(file, from, at - from);
        scanned = true;
    }
}

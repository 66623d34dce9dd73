package putback.store.photos;

/**
 * Whether the tables of a JPEG are as long as they say.
 *
 * <p>Source: ITU-T T.81, B.2.2 to B.2.4.
 */
final class JpegTables {
    private static final int QUANTISATION = 0xdb;
    private static final int HUFFMAN = 0xc4;
    private static final int RESTART = 0xdd;
    private static final int SCAN = 0xda;
    private static final int MOST_COMPONENTS = 4;
    private static final int CODE_LENGTHS = 16;

    private JpegTables() {}

    static boolean isFrame(int marker) {
        return marker >= 0xc0 && marker <= 0xc2;
    }

    static void check(byte[] file, int marker, int body, int end) throws Malformed {
        boolean sound =
                switch (marker) {
                    case QUANTISATION -> quantisation(file, body, end);
                    case HUFFMAN -> huffman(file, body, end);
                    case RESTART -> end - body == 2;
                    case SCAN -> scan(file, body, end);
                    default -> isFrame(marker) && frame(file, body, end);
                };
        if (!sound) {
            throw new Malformed("it is damaged at byte " + body + ", or of a rare kind that is not shown here");
        }
    }

    private static boolean quantisation(byte[] file, int body, int end) {
        int at = body;
        while (at < end) {
            int precision = (file[at] & 0xf0) >> 4;
            if (precision > 1 || (file[at] & 0x0f) >= MOST_COMPONENTS) {
                return false;
            }
            at += 1 + 64 * (precision + 1);
        }
        return at == end && at > body;
    }

    private static boolean huffman(byte[] file, int body, int end) {
        int at = body;
        while (at < end) {
            if (at + CODE_LENGTHS >= end || (file[at] & 0xec) != 0) {
                return false;
            }
            int codes = 0;
            for (int i = 1; i <= CODE_LENGTHS; i++) {
                codes += file[at + i] & 0xff;
            }
            if (codes > 256) {
                return false;
            }
            at += 1 + CODE_LENGTHS + codes;
        }
        return at == end && at > body;
    }

    private static boolean scan(byte[] file, int body, int end) {
        int components = body < end ? file[body] & 0xff : 0;
        return components >= 1 && components <= MOST_COMPONENTS && end - body == 4 + 2 * components;
    }

    private static boolean frame(byte[] file, int body, int end) {
        if (end - body < 6 || file[body] != 8) {
            return false;
        }
        int components = file[body + 5] & 0xff;
        boolean sized = (file[body + 3] | file[body + 4]) != 0 && (file[body + 1] | file[body + 2]) != 0;
        return sized && components >= 1 && components <= MOST_COMPONENTS && end - body == 6 + 3 * components;
    }
}

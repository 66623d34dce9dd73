package putback.app.papers;

import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import com.google.zxing.qrcode.encoder.Encoder;
import java.nio.charset.StandardCharsets;
import java.util.Map;

/** A short text as a QR code (ISO/IEC 18004), drawn as one path. */
public final class QrCode {
    /** Light modules that the standard asks for on every side. */
    private static final int QUIET = 4;

    private static final int LONGEST = 200;

    private QrCode() {}

    /**
     * A square SVG with its quiet zone.
     *
     * @param text cut after 200 characters, so that its modules stay large enough for a camera
     */
    public static String svg(String text) {
        String shown = text.length() > LONGEST ? text.substring(0, LONGEST) : text;
        ByteMatrix modules = modules(shown);
        int size = modules.getWidth() + 2 * QUIET;
        StringBuilder svg = new StringBuilder(4096);
        svg.append("<svg xmlns=\"http://www.w3.org/2000/svg\" alt=\"QR code: ").append(Printable.escaped(shown));
        svg.append("\" viewBox=\"0 0 ").append(size).append(' ').append(size).append("\"><path fill=\"#000000\" d=\"");
        for (int y = 0; y < modules.getHeight(); y++) {
            row(svg, modules, y);
        }
        return svg.append("\"/></svg>").toString();
    }

    /** Dark modules beside each other are one bar: no hairlines between them. */
    private static void row(StringBuilder svg, ByteMatrix modules, int y) {
        int x = 0;
        while (x < modules.getWidth()) {
            int from = x;
            while (x < modules.getWidth() && modules.get(x, y) == 1) {
                x++;
            }
            if (x > from) {
                svg.append('M').append(from + QUIET).append(' ').append(y + QUIET);
                svg.append('h').append(x - from).append("v1h-").append(x - from).append('z');
            }
            x++;
        }
    }

    private static ByteMatrix modules(String text) {
        try {
            return Encoder.encode(
                            text,
                            ErrorCorrectionLevel.M,
                            Map.of(EncodeHintType.CHARACTER_SET, StandardCharsets.UTF_8.name()))
                    .getMatrix();
        } catch (WriterException fault) {
            throw new IllegalStateException("200 characters fit into a QR code", fault);
        }
    }
}

package putback.app.papers;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FSFontUseCase;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import java.awt.Font;
import java.awt.FontFormatException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.EnumSet;
import java.util.Set;

/** The letters of all papers, packed with the program so that a paper looks the same on every machine. */
final class Typeface {
    private static final String NAME = "Liberation Sans";
    private static final Set<FSFontUseCase> USES = EnumSet.of(FSFontUseCase.DOCUMENT, FSFontUseCase.SVG);
    private static final int PLAIN = 400;
    private static final int BOLD = 700;
    private static final Font GLYPHS = glyphs();

    private Typeface() {}

    /** Whether there is a letter for it, and it stands by itself from left to right. */
    static boolean has(int letter) {
        byte direction = Character.getDirectionality(letter);
        return GLYPHS.canDisplay(letter)
                && direction != Character.DIRECTIONALITY_RIGHT_TO_LEFT
                && direction != Character.DIRECTIONALITY_RIGHT_TO_LEFT_ARABIC;
    }

    static void into(PdfRendererBuilder builder) {
        builder.useFont(() -> open("Regular"), NAME, PLAIN, FontStyle.NORMAL, true, USES);
        builder.useFont(() -> open("Bold"), NAME, BOLD, FontStyle.NORMAL, true, USES);
        builder.useFont(() -> open("Italic"), NAME, PLAIN, FontStyle.ITALIC, true, USES);
    }

    private static Font glyphs() {
        // Nothing is shown: without this a desktop opens a connection to its screen, or an icon in its dock.
        System.setProperty("java.awt.headless", "true");
        try (InputStream stream = open("Regular")) {
            return Font.createFont(Font.TRUETYPE_FONT, stream);
        } catch (FontFormatException | IOException fault) {
            throw new IllegalStateException("the program's own typeface cannot be read", fault);
        }
    }

    private static InputStream open(String cut) {
        String file = "fonts/LiberationSans-" + cut + ".ttf";
        InputStream stream = Typeface.class.getResourceAsStream(file);
        if (stream == null) {
            throw new UncheckedIOException(new IOException(file + " is not packed with the program"));
        }
        return stream;
    }
}

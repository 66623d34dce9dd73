package putback.app.papers;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.ChecksumException;
import com.google.zxing.FormatException;
import com.google.zxing.NotFoundException;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.graphics.PDXObject;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/** A paper opened again. */
final class Sheets implements AutoCloseable {
    private static final Path PICTURES = Path.of("target", "screenshots");
    private static final int DPI = 100;
    private static final int PRINTER_DPI = 300;
    private final PDDocument document;

    private Sheets(PDDocument document) {
        this.document = document;
    }

    static Sheets of(byte[] pdf) {
        try {
            return new Sheets(Loader.loadPDF(pdf));
        } catch (IOException fault) {
            throw new IllegalStateException(fault);
        }
    }

    int count() {
        return document.getNumberOfPages();
    }

    /** All words, in reading order, spaces and line ends as one space. */
    String text() throws IOException {
        PDFTextStripper stripper = new PDFTextStripper();
        stripper.setSortByPosition(false);
        return stripper.getText(document).replace("\u00a0", " ").replaceAll("\\s+", " ");
    }

    /** The words of one page. */
    String text(int page) throws IOException {
        PDFTextStripper stripper = new PDFTextStripper();
        stripper.setStartPage(page);
        stripper.setEndPage(page);
        stripper.setSortByPosition(false);
        return stripper.getText(document).replace("\u00a0", " ").replaceAll("\\s+", " ");
    }

    /** Letters that stand outside the page they are on, with their places. */
    List<String> outside() throws IOException {
        List<String> outside = new ArrayList<>();
        for (int page = 1; page <= count(); page++) {
            double width = document.getPage(page - 1).getMediaBox().getWidth();
            double height = document.getPage(page - 1).getMediaBox().getHeight();
            int number = page;
            PDFTextStripper stripper = new PDFTextStripper() {
                @Override
                protected void processTextPosition(TextPosition at) {
                    boolean in = at.getX() >= 0
                            && at.getX() + at.getWidth() <= width + 0.5
                            && at.getY() >= 0
                            && at.getY() <= height;
                    if (!in && !at.getUnicode().isBlank()) {
                        outside.add(number + ": " + at.getUnicode() + " at " + at.getX() + ", " + at.getY());
                    }
                }
            };
            stripper.setStartPage(page);
            stripper.setEndPage(page);
            stripper.getText(document);
        }
        return outside;
    }

    /** The lowest base line of any letter, in points from the top of its page. */
    double lowest() throws IOException {
        double[] lowest = {0};
        PDFTextStripper stripper = new PDFTextStripper() {
            @Override
            protected void processTextPosition(TextPosition at) {
                lowest[0] = Math.max(lowest[0], at.getY());
            }
        };
        stripper.getText(document);
        return lowest[0];
    }

    /** What each drawing says to those who do not see it; empty for nothing. */
    List<String> drawings() {
        List<String> said = new ArrayList<>();
        drawings(document.getDocumentCatalog().getStructureTreeRoot(), said);
        return said;
    }

    private static void drawings(PDStructureNode node, List<String> said) {
        if (node instanceof PDStructureElement element && "Figure".equals(element.getStructureType())) {
            String words = element.getAlternateDescription();
            said.add(words == null ? "" : words);
        }
        for (Object kid : node.getKids()) {
            if (kid instanceof PDStructureNode below) {
                drawings(below, said);
            }
        }
    }

    /** The names of all typefaces that are used; one that is not embedded has a cross before it. */
    List<String> typefaces() throws IOException {
        List<String> names = new ArrayList<>();
        for (PDPage page : document.getPages()) {
            typefaces(page.getResources(), names);
        }
        return names;
    }

    private static void typefaces(PDResources resources, List<String> names) throws IOException {
        for (COSName name : resources.getFontNames()) {
            PDFont font = resources.getFont(name);
            names.add((font.isEmbedded() ? "" : "x ") + font.getName());
        }
        for (COSName name : resources.getXObjectNames()) {
            PDXObject object = resources.getXObject(name);
            if (object instanceof PDFormXObject form && form.getResources() != null) {
                typefaces(form.getResources(), names);
            }
        }
    }

    /** What a reader finds in the QR code of a page, as a printer would print it. */
    String qr(int page) throws IOException, NotFoundException, ChecksumException, FormatException {
        BufferedImage image = new PDFRenderer(document).renderImageWithDPI(page - 1, PRINTER_DPI, ImageType.RGB);
        int[] pixels = image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
        RGBLuminanceSource light = new RGBLuminanceSource(image.getWidth(), image.getHeight(), pixels);
        return new QRCodeReader()
                .decode(new BinaryBitmap(new HybridBinarizer(light)))
                .getText();
    }

    PDDocument document() {
        return document;
    }

    /** Draws each page into target/screenshots. */
    void pictures(String name) throws IOException {
        Files.createDirectories(PICTURES);
        PDFRenderer renderer = new PDFRenderer(document);
        for (int page = 0; page < count(); page++) {
            BufferedImage image = renderer.renderImageWithDPI(page, DPI, ImageType.RGB);
            ImageIO.write(
                    image,
                    "png",
                    PICTURES.resolve("papers-" + name + "-" + (page + 1) + ".png")
                            .toFile());
        }
    }

    @Override
    public void close() throws IOException {
        document.close();
    }
}

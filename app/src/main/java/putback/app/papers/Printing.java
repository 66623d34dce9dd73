package putback.app.papers;

import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.XRLog;
import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Calendar;
import java.util.GregorianCalendar;
import java.util.Locale;
import java.util.TimeZone;
import java.util.zip.CRC32;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.jspecify.annotations.Nullable;

/** Sets a paper as a tagged PDF. The same paper gives the same bytes. */
final class Printing {
    private static final String PRODUCER = "Putback";

    private Printing() {}

    /** The paper as a PDF file. */
    static byte[] pdf(Paper paper) {
        return pdf(html("papers/paper.jte", "paper", paper), paper.head().on());
    }

    /** What a template makes of one value. */
    static String html(String template, String name, Object value) {
        StringOutput page = new StringOutput();
        TemplateEngine.createPrecompiled(ContentType.Html).render(template, java.util.Map.of(name, value), page);
        return page.toString();
    }

    /**
     * @param on the day that the file says it was made on; null for none
     */
    static byte[] pdf(String html, @Nullable LocalDate on) {
        String page = Printable.page(Printable.joined(html));
        XRLog.setLoggingEnabled(false);
        PdfRendererBuilder builder = new PdfRendererBuilder();
        try (BatikSVGDrawer drawer = new BatikSVGDrawer()) {
            Typeface.into(builder);
            builder.usePdfUaAccessibility(true)
                    .withProducer(PRODUCER)
                    .useSVGDrawer(drawer)
                    .withHtmlContent(page, null);
            try (PdfBoxRenderer renderer = builder.buildPdfRenderer()) {
                renderer.createPDFWithoutClosing();
                return bytes(renderer.getPdfDocument(), number(page), on);
            }
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }

    private static byte[] bytes(PDDocument document, long number, @Nullable LocalDate on) throws IOException {
        document.setDocumentId(number);
        PDDocumentInformation information = document.getDocumentInformation();
        Calendar day = on == null ? null : day(on);
        information.setCreationDate(day);
        information.setModificationDate(day);
        Metadata.write(document, information, day);
        ByteArrayOutputStream bytes = new ByteArrayOutputStream(1 << 16);
        document.save(bytes);
        return bytes.toByteArray();
    }

    private static Calendar day(LocalDate on) {
        Calendar day = new GregorianCalendar(TimeZone.getTimeZone(ZoneOffset.UTC), Locale.ROOT);
        day.setTimeInMillis(on.atStartOfDay(ZoneOffset.UTC).toInstant().toEpochMilli());
        return day;
    }

    /** What tells two papers apart: their words. */
    private static long number(String page) {
        CRC32 sum = new CRC32();
        sum.update(page.getBytes(StandardCharsets.UTF_8));
        return sum.getValue();
    }
}

package putback.app.papers;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Calendar;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.common.PDMetadata;
import org.jspecify.annotations.Nullable;

/** What a file says of itself, without the hour at which it was made: that would make each file another one. */
final class Metadata {
    private Metadata() {}

    /** Writes title and conformance (ISO 14289-1, part 1) as XMP. */
    static void write(PDDocument document, PDDocumentInformation information, @Nullable Calendar day)
            throws IOException {
        String title = Printable.escaped(String.valueOf(information.getTitle()));
        String made = day == null
                ? ""
                : "<xmp:CreateDate>"
                        + DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(
                                day.toInstant().atOffset(ZoneOffset.UTC))
                        + "</xmp:CreateDate>";
        String xmp = """
                <?xpacket begin="\ufeff" id="W5M0MpCehiHzreSzNTczkc9d"?>
                <x:xmpmeta xmlns:x="adobe:ns:meta/"><rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">
                <rdf:Description rdf:about="" xmlns:dc="http://purl.org/dc/elements/1.1/"
                 xmlns:xmp="http://ns.adobe.com/xap/1.0/" xmlns:pdf="http://ns.adobe.com/pdf/1.3/"
                 xmlns:pdfuaid="http://www.aiim.org/pdfua/ns/id/">
                <dc:title><rdf:Alt><rdf:li xml:lang="x-default">TITLE</rdf:li></rdf:Alt></dc:title>
                <pdf:Producer>Putback</pdf:Producer>MADE<pdfuaid:part>1</pdfuaid:part>
                </rdf:Description></rdf:RDF></x:xmpmeta>
                <?xpacket end="w"?>
                """.replace("TITLE", title).replace("MADE", made);
        PDMetadata metadata = new PDMetadata(document);
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        bytes.write(xmp.getBytes(StandardCharsets.UTF_8));
        metadata.importXMPMetadata(bytes.toByteArray());
        document.getDocumentCatalog().setMetadata(metadata);
    }
}

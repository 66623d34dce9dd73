package putback.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PapersCommandTest {
    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"job-card", "labels", "fill-in", "tightening-record"})
    void eachKind_isWrittenTwiceTheSame(String kind) throws IOException {
        byte[] first = written(kind, "a.pdf");
        assertThat(new String(first, 0, 5, StandardCharsets.US_ASCII)).isEqualTo("%PDF-");
        assertThat(written(kind, "b.pdf")).isEqualTo(first);
        try (Stream<Path> left = Files.list(folder)) {
            assertThat(left).hasSize(2);
        }
    }

    private byte[] written(String kind, String name) throws IOException {
        Path file = folder.resolve(name);
        Said said = Said.by(
                "papers",
                "front-brake",
                "--renew",
                "disc",
                "--kind",
                kind,
                "--paper",
                "letter",
                "--job",
                "12",
                "--pdf",
                file.toString());
        assertThat(said.err()).isEmpty();
        assertThat(said.exit()).isEqualTo(Exit.DONE);
        return Files.readAllBytes(file);
    }

    @Test
    void planAndPrice_writeTheirPapersOverAnOlderOne() throws IOException {
        Path file = Files.writeString(folder.resolve("old.pdf"), "%PDF-1.4 old");
        for (String command : new String[] {"plan", "price"}) {
            Said said =
                    Said.by(command, "front-brake", "--renew", "pads", "--on", "2026-11-02", "--pdf", file.toString());
            assertThat(said.err()).isEmpty();
            assertThat(said.out()).isEmpty();
            assertThat(said.exit()).isEqualTo(Exit.DONE);
            assertThat(Files.size(file)).isGreaterThan(1000);
        }
    }

    @Test
    void toolbox_bringsItsWrenchesOntoTheJobCard() throws IOException {
        Path with = folder.resolve("with.pdf");
        Path without = folder.resolve("without.pdf");
        Said.by("plan", "front-strut", "--renew", "strut", "--pdf", without.toString());
        Said said = Said.by(
                "plan",
                "front-strut",
                "--renew",
                "strut",
                "--toolbox",
                "demo",
                "--on",
                "2026-11-02",
                "--pdf",
                with.toString());
        assertThat(said.err()).isEmpty();
        assertThat(words(with)).contains("Torque wrenches", "; a reading may be ");
        assertThat(words(without)).doesNotContain("Torque wrenches");
    }

    private static String words(Path file) throws IOException {
        try (PDDocument document = Loader.loadPDF(file.toFile())) {
            return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
        }
    }

    @Test
    void fileThatIsNoPdf_isNotWrittenOver() throws IOException {
        Path sheet = Files.writeString(folder.resolve("my-van.yaml"), "sheet: my-van");
        Said said = Said.by("plan", "front-brake", "--renew", "pads", "--pdf", sheet.toString());
        assertThat(said.exit()).isEqualTo(Exit.BAD_INPUT);
        assertThat(said.err()).contains("is there and is no PDF, so it is not written over");
        assertThat(sheet).hasContent("sheet: my-van");
    }

    @Test
    void folderOrAFolderThatIsMissing_isTold() {
        assertThat(Said.by("plan", "front-brake", "--renew", "pads", "--pdf", folder.toString())
                        .err())
                .contains("is a folder; give the name of a file in it");
        assertThat(Said.by(
                                "plan",
                                "front-brake",
                                "--renew",
                                "pads",
                                "--pdf",
                                folder.resolve("no/x.pdf").toString())
                        .err())
                .contains("there is no folder " + folder.resolve("no"));
    }

    @Test
    void fullOrClosedDisk_isToldPlainly() {
        assertThat(PdfFile.said(new FileSystemException("x.pdf", null, "No space left on device")))
                .isEqualTo("the disk is full");
        assertThat(PdfFile.said(new IOException("No space left on device"))).isEqualTo("the disk is full");
        assertThat(PdfFile.said(new FileSystemException("x.pdf", null, "Read-only file system")))
                .isEqualTo("the disk is read-only");
        assertThat(PdfFile.said(new AccessDeniedException("x.pdf"))).isEqualTo("its folder may not be written to");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--renew pads --kind labels|say where to: --pdf FILE",
                "--renew pads --pdf x.pdf|--kind is job-card, labels, fill-in, tightening-record",
                "--renew pads --kind book --pdf x.pdf|not \"book\"",
                "--renew pads --kind job-card --pdf x.pdf --paper roll|--paper roll is for labels",
                "--renew pads --kind labels --pdf x.pdf --paper a5|--paper is a4 or letter, not \"a5\"",
                "--renew pads --kind labels --pdf x.pdf --on soon|--on is a day such as",
                "--kind labels --pdf x.pdf|say what is to be renewed",
                "--renew pants --kind labels --pdf x.pdf|pants"
            })
    void wrongCall_isToldWhatIsRight(String options, String message) {
        List<String> words = new ArrayList<>(List.of("papers", "front-brake"));
        words.addAll(List.of(options.split(" ", -1)));
        Said said = Said.by(words.toArray(new String[0]));
        assertThat(said.exit()).isEqualTo(Exit.BAD_INPUT);
        assertThat(said.err()).contains(message);
        assertThat(said.out()).isEmpty();
    }
}

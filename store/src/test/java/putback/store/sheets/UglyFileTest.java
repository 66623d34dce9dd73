package putback.store.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class UglyFileTest {
    @TempDir
    Path folder;

    static Stream<Arguments> ugly() {
        return Stream.of(
                file("empty", "", "1:1: the sheet is empty"),
                file("blank", "\n  \n", "1:1: the sheet is empty"),
                file("comment only", "# nothing\n", "1:1: the sheet is empty"),
                file("null", "~", "1:1: the sheet is empty"),
                file("mark only", "\uFEFF", "1:1: the sheet is empty"),
                file("scalar", "hello", "1:1: a sheet is a map"),
                file("list", "- a", "1:1: a sheet is a map"),
                file("two documents", "---\na: b\n---\nc: d\n", "3:1: a second document begins here"),
                file("text after the end", "a: b\n...\nxx", "3:1: this is not YAML"),
                file("tab", "sheet: a\n\ttitle: b", "2:1: a tab cannot indent here; use spaces"),
                file("colon in text", "title: a: b", "1:9: a colon cannot stand here"),
                file("open list", "a: [b, c\nd: e", "2:2: the list before this is not closed"),
                file("open map", "a: {b: c", "1:9: the map before this is not closed"),
                file("open quote", "a: 'b\nc: d\n", "3:1: a quote is opened and never closed"),
                file("bad indent", "a:\n  b: c\n d: e", "3:2: this does not go with what stands above it"),
                file("no colon", "a: 1\nb\nc: 2", "3:1: a key needs a colon"),
                file("bad escape", "a: \"\\q\"", "1:6: in double quotes a backslash"),
                file("at sign", "a: @b", "1:4: a text cannot begin with this character"),
                file("unknown alias", "a: *b", "1:4: *b stands for nothing yet"),
                file("alias to itself", "a: &a [*a]", "1:8: *a stands for nothing yet"),
                file("control character", "a: \u0007b", "1:4: a control character (U+0007) has no place"),
                file("escape character", "a: b\n\u001b[2J", "2:1: a control character (U+001B)"),
                file("deep lists", "[".repeat(1_000_000), "1:51: nested deeper than 50 levels"),
                file("deep maps", "{a: ".repeat(200_000), "1:198: nested deeper than 50 levels"),
                file("deep blocks", "- ".repeat(300_000), "1:101: nested deeper than 50 levels"),
                file("deep keys", "? ".repeat(300_000), "1:101: nested deeper than 50 levels"),
                file("many keys", keys(), "10000:9: more than 20000 values"),
                file("alias bomb", bomb(), "5:8: more than 20000 values"),
                file("a megabyte of one word", "x".repeat(1_000_000), "1:1: a sheet is a map"),
                file("larger than a megabyte", "x".repeat(1 << 20) + "x", "1:1: the file is larger than 1 MiB"),
                bytes("UTF-16", "a: b".getBytes(StandardCharsets.UTF_16), "1:1: the file is UTF-16; save it as UTF-8"),
                bytes("UTF-16 little-endian", new byte[] {(byte) 0xFF, (byte) 0xFE, 'a', 0}, "1:1: the file is UTF-16"),
                bytes("UTF-16 without mark", "a: b".getBytes(StandardCharsets.UTF_16LE), "1:1: the file is not text"),
                bytes(
                        "zero byte",
                        "a: b\0c".getBytes(StandardCharsets.UTF_8),
                        "1:1: the file is not text (it has a zero byte)"),
                bytes(
                        "Latin-1",
                        "a: ok\nb: 9 N·m".getBytes(StandardCharsets.ISO_8859_1),
                        "2:7: this character is not UTF-8"),
                bytes(
                        "cut in a character",
                        new byte[] {'a', ':', ' ', (byte) 0xC2},
                        "1:4: this character is not UTF-8"),
                bytes(
                        "surrogate",
                        new byte[] {'a', (byte) 0xED, (byte) 0xA0, (byte) 0x80},
                        "1:2: this character is not UTF-8"),
                bytes("noise", noise(), "1:1: the file is not text"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("ugly")
    void is_one_clear_fault(String name, byte[] bytes, String said) throws IOException {
        Path file = Files.write(folder.resolve("sheet.yaml"), bytes);
        assertThat(Sheets.faults(SheetReader.read(file))).first().asString().startsWith("sheet.yaml:" + said);
        assertThat(Sheets.faults(SheetReader.read(file))).hasSize(1);
    }

    @Test
    void a_folder_is_no_sheet() {
        assertThat(((Read.Faulty) SheetReader.read(folder)).faults().get(0).message())
                .startsWith("this is a folder");
    }

    @Test
    void a_file_that_is_not_there_and_names_that_cannot_be_are_told() {
        for (String name : new String[] {"", "gone.yaml", "no\0name", "a\nb", "/", "../x", "gone"}) {
            Read read = SheetReader.open(name);
            assertThat(((Read.Faulty) read).faults()).as(name).hasSize(1);
            assertThat(((Read.Faulty) read).faults().get(0).toString()).doesNotContain("\n", "\0");
        }
    }

    @Test
    void a_file_that_may_not_be_read_is_told() throws IOException {
        Path file = Sheets.write(folder, "sheet.yaml", Sheets.SMALL);
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("---------"));
        if (!Files.isReadable(file)) {
            assertThat(Sheets.faults(SheetReader.read(file)))
                    .containsExactly("sheet.yaml:1:1: the file cannot be read; check that it may be read by you");
        }
    }

    @Test
    void a_thousand_faults_are_enough() {
        StringBuilder sheet = new StringBuilder(Sheets.SMALL);
        for (int i = 0; i < 3000; i++) {
            sheet.append("k").append(i).append(": v\n");
        }
        assertThat(Sheets.faults(Sheets.read(folder, sheet.toString())))
                .hasSize(Faults.MOST + 1)
                .last()
                .asString()
                .contains("and 2000 more faults; put these right first");
    }

    private static Arguments file(String name, String text, String said) {
        return bytes(name, text.getBytes(StandardCharsets.UTF_8), said);
    }

    private static Arguments bytes(String name, byte[] bytes, String said) {
        return Arguments.of(name, bytes, said);
    }

    private static String keys() {
        StringBuilder keys = new StringBuilder();
        for (int i = 100_000; i < 190_000; i++) {
            keys.append(i).append(": v\n");
        }
        return keys.toString();
    }

    /** Ten times ten times ten and so on, in eight short lines. */
    private static String bomb() {
        StringBuilder bomb = new StringBuilder("a: &a [x,x,x,x,x,x,x,x,x,x]\n");
        for (char c = 'b'; c < 'j'; c++) {
            String alias = "*" + (char) (c - 1) + " ";
            bomb.append(c)
                    .append(": &")
                    .append(c)
                    .append(" [")
                    .append((alias + ",").repeat(9))
                    .append(alias)
                    .append("]\n");
        }
        return bomb.toString();
    }

    private static byte[] noise() {
        byte[] noise = new byte[100_000];
        new Random(1).nextBytes(noise);
        return noise;
    }
}

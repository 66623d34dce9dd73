package putback.store.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import putback.sheet.Assembly;
import putback.sheet.Tightening;

/** The sheets in docs/sheet-format.md are what it says they are. */
class SheetFormatTest {
    private static final Path GUIDE = Path.of("..", "docs", "sheet-format.md");

    @TempDir
    Path folder;

    private List<String> sheets;
    private List<String> texts;

    @BeforeEach
    void take_the_snippets_out_of_the_guide() throws IOException {
        String guide = Files.readString(GUIDE);
        sheets = blocks(guide, "```yaml\n");
        texts = blocks(guide, "```text\n");
        for (String sheet : sheets) {
            String id = sheet.substring("sheet: ".length(), sheet.indexOf('\n'));
            Sheets.write(folder, id + ".yaml", sheet);
        }
    }

    @Test
    void the_first_sheet_is_sound() {
        Assembly small = Sheets.sound(SheetReader.read(folder.resolve("small-corner.yaml")));
        assertThat(small.joints()).hasSize(8);
        assertThat(small.parts()).hasSize(7);
    }

    @Test
    void the_overlay_does_what_its_notes_say() {
        Assembly van = Sheets.sound(SheetReader.read(folder.resolve("my-van.yaml")));
        assertThat(Sheets.part(van, "left.damper").entry().price()).hasToString("61.50");
        assertThat(Sheets.part(van, "left.damper").entry().handling()).hasToString("0.3 min");
        assertThat(Sheets.part(van, "right.damper").entry().handling()).hasToString("0.8 min");
        assertThat(Sheets.joint(van, "right.damper-top").fastener().tightening())
                .isEqualTo(Tightening.UNKNOWN);
        assertThat(Sheets.joint(van, "left.damper-bottom").fastener().source()).isEqualTo("owner's handbook");
        assertThat(Sheets.joint(van, "right.damper-bottom").fastener().source()).isNull();
    }

    @Test
    void the_wrong_sheet_is_told_as_shown() {
        List<String> faults = Sheets.faults(SheetReader.read(folder.resolve("wrong.yaml")));
        assertThat(String.join("\n", faults) + "\n").isEqualTo(texts.get(0));
    }

    @Test
    void every_key_is_described() throws IOException {
        String guide = Files.readString(GUIDE);
        Keys.all()
                .forEach((what, keys) -> keys.forEach(key ->
                        assertThat(guide).as("%s of %s", key, what).containsPattern("[`{, ]" + key + "[`:,} ]")));
        Words.KINDS.keySet().forEach(kind -> assertThat(guide).contains("`" + kind + "`"));
    }

    private static List<String> blocks(String guide, String fence) {
        List<String> blocks = new ArrayList<>();
        for (int at = guide.indexOf(fence); at >= 0; at = guide.indexOf(fence, at + 1)) {
            blocks.add(guide.substring(at + fence.length(), guide.indexOf("```", at + fence.length())));
        }
        return blocks;
    }
}

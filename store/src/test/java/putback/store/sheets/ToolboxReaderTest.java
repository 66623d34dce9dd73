package putback.store.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import putback.tightening.toolbox.Toolbox;

class ToolboxReaderTest {
    @TempDir
    Path folder;

    private ToolboxRead read(byte[] bytes) throws IOException {
        Path file = folder.resolve("t.yaml");
        Files.write(file, bytes);
        return ToolboxReader.read(file.toString());
    }

    private ToolboxRead read(String text) throws IOException {
        return read(text.getBytes(StandardCharsets.UTF_8));
    }

    private List<String> faults(String text) throws IOException {
        return ((ToolboxRead.Faulty) read(text))
                .faults().stream()
                        .map(fault -> fault.toString().replace(folder.resolve("t.yaml") + ":", ""))
                        .toList();
    }

    @Test
    void demo_isSound() {
        assertThat(ToolboxReader.demo()).isInstanceOf(ToolboxRead.Sound.class);
    }

    @Test
    void everyKind_isRead() throws IOException {
        Toolbox toolbox = ((ToolboxRead.Sound) read("""
                        toolbox: mine
                        sockets: {1/2 in: [18 mm, 3/4 in], 3/8 in: 10 mm}
                        spanners: [17 mm]
                        crowfoot-adapters: {18 mm: 45 mm}
                        bits: [T30]
                        aids: {stands: {count: 4, rating: 3000 kg}, hook: }
                        wrenches: {W1: {range: [2 N·m, 9 N·m], operations: 12}, W2: {range: [30 lbf·ft, 150 lbf·ft], deviation: 3}}
                        """)).toolbox();
        assertThat(toolbox.tools()).hasSize(5);
        assertThat(toolbox.kept("T30 bit")).isNotNull();
        assertThat(toolbox.aids()).extracting("count").containsExactly(4, 1);
        assertThat(toolbox.wrenches().get(0).deviation()).isEqualTo(0.06);
        assertThat(toolbox.wrenches().get(0).deviationStated()).isFalse();
        assertThat(toolbox.wrenches().get(1).deviation()).isEqualTo(0.03);
    }

    @Test
    void everyFault_isToldAtOnce_withItsPlace() throws IOException {
        assertThat(faults("""
                        toolbox: My Box
                        spaners: [10 mm]
                        sockets: {1/2 in: [18 mm, 18 mm, 18 kg, -3 mm]}
                        wrenches:
                          W1: {range: [60 N·m, 10 N·m], calibrated: 11.02.2026}
                          W2: {step: 0 N·m}
                          W 3: {range: [1 N·m, 2 N·m], operations: 1.5, deviation: 0}
                        calibrate: {months: 0}
                        """))
                .hasSize(13)
                .anySatisfy(fault ->
                        assertThat(fault).isEqualTo("2:1: spaners is not a key of the toolbox; maybe spanners"))
                .anySatisfy(fault -> assertThat(fault).startsWith("3:27: sockets: 18 mm is there already"))
                .anySatisfy(fault -> assertThat(fault).contains("\"11.02.2026\" is not a day"))
                .anySatisfy(fault -> assertThat(fault).contains("wrench W2 has no range"))
                .noneSatisfy(fault -> assertThat(fault).contains("Exception"));
    }

    @Test
    void uglyFiles_areRefusedInWords() throws IOException {
        assertThat(faults("")).singleElement().asString().contains("the toolbox is empty");
        assertThat(faults("- 1")).singleElement().asString().contains("a toolbox is a map");
        assertThat(faults("toolbox: a\nwrenches: 3\naids: [x]")).hasSize(2);
        assertThat(ToolboxReader.read("")).isInstanceOf(ToolboxRead.Faulty.class);
        assertThat(ToolboxReader.read(folder.toString())).isInstanceOf(ToolboxRead.Faulty.class);
        assertThat(ToolboxReader.read("\0")).isInstanceOf(ToolboxRead.Faulty.class);
        String bomb =
                "a: &a [x,x,x,x,x,x,x,x,x]\nb: &b [*a,*a,*a,*a,*a,*a,*a,*a,*a]\nc: &c [*b,*b,*b,*b,*b,*b,*b,*b,*b]\n"
                        + "d: &d [*c,*c,*c,*c,*c,*c,*c,*c,*c]\ne: [*d,*d,*d,*d,*d,*d,*d,*d,*d]\n";
        assertThat(read(bomb)).isInstanceOf(ToolboxRead.Faulty.class);
    }

    @Test
    void brokenDemo_isAnsweredWithFaultsOrATools_neverThrown() throws IOException {
        byte[] sound;
        try (var stream = ToolboxReader.class.getResourceAsStream("/putback/toolboxes/demo.yaml")) {
            sound = java.util.Objects.requireNonNull(stream).readAllBytes();
        }
        for (int seed = 0; seed < 400; seed++) {
            Random random = new Random(seed);
            byte[] broken = sound.clone();
            for (int i = 0; i < 1 + random.nextInt(6); i++) {
                broken[random.nextInt(broken.length)] = (byte) "{}[]:,-\n\t \"'&*0x\u00e9".charAt(random.nextInt(17));
            }
            assertThat(read(broken)).as("seed " + seed).isNotNull();
        }
    }
}

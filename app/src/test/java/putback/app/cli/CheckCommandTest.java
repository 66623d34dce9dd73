package putback.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CheckCommandTest {
    @TempDir
    Path folder;

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            behind: [two]   | behind: [one]   | never apart: one, two: A has Two in its way; B has One in its way
            after: [b]      | after: [a]      | never apart: one, two: A comes only after B; B comes only after A
            ahead-of: [b]   | ahead-of: [a]   | never apart: in one job: A ahead of B ahead of A, so no job can open all of them; take one ahead-of out
            behind: [one]   | count: 2        | never apart: one: A has One in its way
            ahead-of: [b]   | count: 2, after: [a], ahead-of: [a] | never apart: in one job: A ahead of B ahead of A, so no job can open all of them; take one ahead-of out
            """)
    void whatLocksItself_isToldWithWhatLocksIt(String first, String second, String told) throws IOException {
        Said said = check("{joins: [one, body], kind: bolt, " + first + "}", second);
        assertThat(said.exit()).isEqualTo(Exit.DONE);
        assertThat(said.err().lines()).contains(told);
        assertThat(said.out())
                .contains("no fault, but not all of it comes apart")
                .doesNotContain("sound");
    }

    @Test
    void jointThatOpensFirstButWaitsForTheOther_isNeverApart() throws IOException {
        assertThat(check("{joins: [one, body], kind: bolt, ahead-of: [b], after: [b]}", "count: 2")
                        .err())
                .startsWith("never apart: one: ");
    }

    @Test
    void partThatCanGoAside_locksNothing() throws IOException {
        Path sheet = Files.writeString(folder.resolve("aside.yaml"), """
                sheet: aside
                title: Aside
                parts: {one: {aside: {open: []}}, two: {}}
                joints:
                  a: {joins: [one, body], kind: bolt, behind: [two]}
                  b: {joins: [two, body], kind: bolt, behind: [one]}
                """);
        Said said = Said.by("check", sheet.toString());
        assertThat(said.err()).isEmpty();
        assertThat(said.out()).contains("sound");
    }

    @Test
    void partInNoJoint_isDoubtful_withoutABaseToo() throws IOException {
        Path sheet = Files.writeString(
                folder.resolve("lone.yaml"),
                "sheet: lone\ntitle: Lone\nparts: {one: {}, spare: {}}\njoints:\n  a: {joins: [one, body], kind: bolt}\n");
        assertThat(Said.by("check", sheet.toString()).err()).startsWith("doubtful: part spare: it is in no joint");
    }

    @ParameterizedTest
    @ValueSource(strings = {"demo-van", "front-brake", "front-strut", "twist-beam"})
    void everyStockSheet_comesApartAsAWhole(String sheet) {
        assertThat(Said.by("check", sheet).err()).isEmpty();
    }

    @Test
    void ringOfManyParts_isToldSoonAndShortly() throws IOException {
        int parts = 900;
        StringBuilder sheet = new StringBuilder("sheet: ring\ntitle: Ring\nparts:\n");
        for (int i = 0; i < parts; i++) {
            sheet.append("  p").append(i).append(": {}\n");
        }
        sheet.append("joints:\n");
        for (int i = 0; i < parts; i++) {
            String held = i == 0 ? "body" : "p" + (i - 1);
            sheet.append(
                    "  j%d: {joins: [p%d, %s], kind: bolt, behind: [p%d]}%n".formatted(i, i, held, (i + 1) % parts));
        }
        Said said = Said.by(
                "check", Files.writeString(folder.resolve("ring.yaml"), sheet).toString());
        assertThat(said.exit()).isEqualTo(Exit.DONE);
        assertThat(said.err())
                .startsWith("never apart: p0, p1")
                .contains("and so on")
                .hasSizeLessThan(5000);
    }

    private Said check(String first, String second) throws IOException {
        Path sheet = Files.writeString(
                folder.resolve("ring.yaml"),
                "sheet: ring\ntitle: Ring\nparts: {one: {}, two: {}}\njoints:\n  a: " + first
                        + "\n  b: {joins: [two, body], kind: bolt, " + second + "}\n");
        return Said.by("check", sheet.toString());
    }
}

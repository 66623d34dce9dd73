package putback.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BounceCommandTest {
    @TempDir
    Path folder;

    @Test
    void json_hasTheAgreedKeys() throws IOException {
        Said said = Said.by("bounce", file("a.csv", csv(0.25, ",", "time,height\n")), "--json");
        assertThat(said.err()).isEmpty();
        assertThat(said.out())
                .matches("\\{\"dampingRatio\":0\\.2[45]\\d*,\"frequencyHz\":1\\.\\d+,\"cycles\":[\\d.]+,"
                        + "\"fit\":(1|0\\.99\\d*),.*\\}\n");
    }

    @Test
    void aVeryLongRecord_orAMillionWrongRows_isRefusedWithoutFillingTheMemory() throws IOException {
        StringBuilder rows = new StringBuilder(12_000_000);
        for (int i = 0; i < 600_000; i++) {
            rows.append(i).append(",1\n");
        }
        Said said = Said.by("bounce", file("long.csv", rows.toString()));
        assertThat(said.exit()).isEqualTo(Exit.BAD_INPUT);
        assertThat(said.err()).contains("more than 500000 readings; cut the record");
        Said words = Said.by("bounce", file("words.csv", "1,2\n" + "a,b\n".repeat(1_000_000)));
        assertThat(words.err().lines().count()).isLessThanOrEqualTo(1001);
    }

    @Test
    void semicolonsWithDecimalCommas_areTheSame() throws IOException {
        String plain = Said.by("bounce", file("a.csv", csv(0.25, ",", ""))).out();
        String german = csv(0.25, ",", "").replace(',', ';').replace('.', ',');
        assertThat(Said.by("bounce", file("b.csv", german)).out()).isEqualTo(plain);
    }

    @Test
    void theAnswer_isWithinEightyColumns() throws IOException {
        String one = file("a.csv", csv(0.12, ",", ""));
        assertThat(Said.by("bounce", one, one).out().lines()).allMatch(line -> line.length() <= 80);
        assertThat(Said.by("bounce", one).out().lines()).allMatch(line -> line.length() <= 80);
    }

    @Test
    void oneFile_saysToRecordTheOtherSide() throws IOException {
        String one = file("a.csv", csv(0.3, ",", ""));
        assertThat(Said.by("bounce", one).out()).contains("record the other side the same way");
    }

    @Test
    void aFileThatIsNoTrace_isTenFaultsAndACount_butATraceWithSomeWrongRowsHasThemAllTold() throws IOException {
        Said wrong = Said.by("bounce", file("script.sh", "echo hello\n".repeat(200)));
        assertThat(wrong.exit()).isEqualTo(Exit.BAD_INPUT);
        assertThat(wrong.err().lines()).hasSize(11);
        assertThat(wrong.err()).contains(": and 189 more faults, in about every line. Maybe it is another file");
        String rows = csv(0.3, ",", "");
        Said some = Said.by("bounce", file("some.csv", rows + "x,y\n".repeat(12)));
        assertThat(some.err().lines().count()).isGreaterThanOrEqualTo(12);
        assertThat(some.err()).doesNotContain("another file");
    }

    @Test
    void twoFiles_compareLeftAndRight() throws IOException {
        String left = file("l.csv", csv(0.12, ",", ""));
        String right = file("r.csv", csv(0.3, ",", ""));
        assertThat(Said.by("bounce", left, right).out()).contains("The left side is damped less: 40 % of the other");
        assertThat(Said.by("bounce", left, right, "--json").out())
                .contains("\"left\":{\"dampingRatio\":0.1", "\"right\":{\"dampingRatio\":", "\"weaker\":\"left\"");
        assertThat(Said.by("bounce", left, left).out()).contains("much alike");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "'' | 1:1: the file is empty",
                "'time,height' | 1:1: there are only 0 readings",
                "'0,1/0.1,2' | 1:1: there are only 2 readings",
                "'0,1/0.1,nan' | 2:5: the reading \"nan\" is not a number",
                "'0,1/inf,2' | 2:1: the time \"inf\" is not a number",
                "'0,1/0.1,' | 2:5: the reading is missing",
                "'0,1/0.1,2,3' | 2:1: this row has 3 columns",
                "'0/1' | 1:1: this row has 1 column; it needs two",
                "'0,1/.1,1/.2,1/.3,1/.4,1/.5,1/.6,1/.7,1/.8,1/.9,1/1,1/5,1/5.1,1' | 12:1: this step of time differs",
                "'0,1/.1,1/.2,1/.3,1/.4,1/.5,1/.6,1/.7,1/.8,1/.9,1/1,1/1,1/1.1,1' | 12:1: the time does not go on",
                "'0,1/.1,1/.2,1/.3,1/.4,1/.5,1/.6,1/.7,1/.8,1/.9,1/1,1/1.1,1/1.2,1' | 1:1: nothing moves in it",
            })
    void anUglyFile_isAFaultWithItsPlace(String text, String because) throws IOException {
        Said said = Said.by("bounce", file("a.csv", text.replace('/', '\n')));
        assertThat(said.exit()).isEqualTo(Exit.BAD_INPUT);
        assertThat(said.out()).isEmpty();
        assertThat(said.err()).startsWith(folder.resolve("a.csv") + ":").contains(because);
    }

    @Test
    void binaryMissingAndFolder_areOneClearFault() throws IOException {
        Path binary = Files.write(folder.resolve("b.csv"), new byte[] {0, 1, 2, (byte) 0xFF});
        assertThat(Said.by("bounce", binary.toString()).err()).contains("a bounce trace is a CSV text file in UTF-8");
        for (String name : new String[] {"", "gone.csv", "no\0name", folder.toString()}) {
            Said gone = Said.by("bounce", name);
            assertThat(gone.exit()).as(name).isEqualTo(Exit.BAD_INPUT);
            assertThat(gone.err().lines()).hasSize(1);
        }
    }

    private String file(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text).toString();
    }

    private static String csv(double ratio, String between, String head) {
        StringBuilder text = new StringBuilder(head);
        double swing = 2 * Math.PI * 1.3;
        double decay = swing * ratio / Math.sqrt(1 - ratio * ratio);
        for (int i = 0; i < 300; i++) {
            double t = i * 0.01;
            text.append(String.format(
                    Locale.ROOT, "%.3f%s%.4f%n", t, between, 500 + 60 * Math.exp(-decay * t) * Math.cos(swing * t)));
        }
        return text.toString();
    }
}

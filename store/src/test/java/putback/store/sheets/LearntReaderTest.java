package putback.store.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import putback.labour.price.Observed;
import putback.labour.seized.RustGrade;

class LearntReaderTest {
    @TempDir
    Path folder;

    private LearntRead read(String text) throws IOException {
        Path file = folder.resolve("seen.jsonl");
        Files.writeString(file, text);
        return LearntReader.read(file.toString());
    }

    @Test
    void everyKindOfLine_isRead_withoutItsSide_andWithoutWhatInterruptedIt() throws IOException {
        LearntRead read = read("""
                {"joint":"left.bolt","do":"open","minutes":6.5,"interruptedMinutes":2,"by":"M"}

                {"joint":"bolt","rust":3,"of":4,"seized":1}
                {"resort":"heat","worked":true,"minutes":7}
                {"resort":"heat","worked":false}
                """);
        assertThat(((LearntRead.Sound) read).seen())
                .containsExactly(
                        new Observed.Took("bolt", true, 4.5),
                        new Observed.Rusted("bolt", RustGrade.SWOLLEN, 1, 4),
                        new Observed.Tried("heat", true, 7),
                        new Observed.Tried("heat", false, 0));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "{\"joint\":\"bolt\",\"do\":\"open\",\"minutes\":2,\"interruptedMinutes\":2}|nothing is left of the minutes",
                "{\"joint\":\"bolt\",\"do\":\"open\"}|has no minutes",
                "{\"joint\":\"bolt\",\"do\":\"weld\",\"minutes\":2}|neither open nor close",
                "{\"joint\":\"bolt\",\"do\":\"open\",\"minutes\":-2}|is not a number from 0",
                "{\"joint\":\"bolt\",\"rust\":2,\"of\":1,\"seized\":2}|2 of 1 seized cannot be",
                "{\"joint\":\"bolt\",\"rust\":5,\"of\":1,\"seized\":1}|rust 5 is not a grade",
                "{\"joint\":\"bolt\",\"rust\":1.5,\"of\":1,\"seized\":1}|in whole numbers",
                "{\"resort\":\"heat\",\"worked\":\"perhaps\"}|needs worked, true or false",
                "{\"minutes\":3}|give one of the two",
                "{\"resort\":\"heat\",\"joint\":\"bolt\"}|give one of the two",
                "nonsense|seen.jsonl:2"
            })
    void badLine_isTold_withItsPlace(String line, String because) throws IOException {
        LearntRead read = read("\n" + line + "\n");
        assertThat(read).isInstanceOf(LearntRead.Faulty.class);
        assertThat(((LearntRead.Faulty) read).faults().get(0).toString())
                .contains("seen.jsonl:2")
                .contains(because);
    }

    @Test
    void fileThatIsNotThere_isTold() {
        assertThat(((LearntRead.Faulty) LearntReader.read("no-such.jsonl"))
                        .faults()
                        .get(0)
                        .toString())
                .contains("there is no such file");
    }
}

package putback.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BushCommandTest {
    @Test
    void json_hasTheAgreedKey() {
        Said said = Said.by("bush", "--arm", "350mm", "--ride", "-15mm", "--tightened", "-100mm", "--json");
        assertThat(said.exit()).isEqualTo(Exit.DONE);
        assertThat(said.out()).startsWith("{\"windUpDeg\":14.14").endsWith("}\n");
    }

    @Test
    void text_saysWhatToDo() {
        Said said = Said.by("bush", "--arm", "350mm", "--ride", "-15mm", "--tightened", "-100mm");
        assertThat(said.out()).contains("wound up by 14.15°", "bring the arm to ride height");
        assertThat(said.out().lines()).allMatch(line -> line.length() <= 80);
        assertThat(Said.by("bush", "--arm", "1 m", "--ride", "0mm", "--tightened", "1mm")
                        .out())
                .contains("hardly any");
    }

    @ParameterizedTest
    @CsvSource({
        "0mm, 0mm, 0mm, has no length",
        "-5mm, 0mm, 0mm, has no length",
        "350mm, 350mm, 0mm, cannot have its outer end",
        "350mm, 0mm, -400mm, cannot have its outer end",
        "350, 0mm, 0mm, has no unit",
        "nan, 0mm, 0mm, is not a length",
        "350mm, 3deg, 0mm, not a length",
    })
    void whatCannotBe_isRefusedInWords(String arm, String ride, String tightened, String because) {
        Said said = Said.by("bush", "--arm", arm, "--ride", ride, "--tightened", tightened);
        assertThat(said.exit()).isEqualTo(Exit.BAD_INPUT);
        assertThat(said.err()).contains(because);
        assertThat(said.out()).isEmpty();
    }

    @Test
    void aMissingValue_isNamed() {
        assertThat(Said.by("bush", "--arm", "350mm").err()).contains("--ride is missing");
    }
}

package putback.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import putback.app.json.JsonTree;

class ProofCommandTest {
    @Test
    void everyCase_hasItsSourceAndItsReason_andNoneDisagreesUnexplained() {
        Said said = Said.by("proof", "--room", "tightening", "--json");
        assertThat(said.exit()).isEqualTo(Exit.DONE);
        Map<?, ?> json = (Map<?, ?>) JsonTree.read(said.out());
        List<?> cases = (List<?>) json.get("cases");
        assertThat(cases).hasSizeGreaterThan(300).allSatisfy(one -> {
            Map<?, ?> row = (Map<?, ?>) one;
            assertThat(row.get("room")).isEqualTo("tightening");
            assertThat(String.valueOf(row.get("source"))).hasSizeGreaterThan(8);
            assertThat(String.valueOf(row.get("because"))).hasSizeGreaterThan(8);
            assertThat(row.get("verdict")).isIn("agrees", "known disagreement");
        });
        assertThat(String.valueOf(json.get("disagree"))).isEqualTo("0");
    }

    @Test
    void text_endsWithTheCount_withinEightyColumns() {
        Said said = Said.by("proof", "--room", "tightening");
        assertThat(said.out().replaceAll("\\s+", " "))
                .endsWith(" in known disagreement, 0 in disagreement without an explanation. ");
        assertThat(said.out().lines()).allMatch(line -> line.length() <= 80);
    }

    @Test
    void unknownRoom_isRefused_andTheRoomsAreNamed() {
        Said said = Said.by("proof", "--room", "kitchen");
        assertThat(said.exit()).isEqualTo(Exit.BAD_INPUT);
        assertThat(said.err()).contains("there is no room \"kitchen\"", "tightening", "labour");
    }
}

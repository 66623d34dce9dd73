package putback.proof;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

class ProofsTest {
    private static final Path PAGE = Path.of("..", "docs", "validation.md");

    @Test
    void noCase_disagreesWithoutAnExplanation() {
        List<Case> cases = Proofs.run("");
        assertThat(cases).hasSizeGreaterThan(50);
        assertThat(cases)
                .allSatisfy(one -> assertThat(one.verdict()).as(one.toString()).isNotEqualTo(Verdict.DISAGREES));
    }

    @Test
    void thePageOfValidation_isCurrent() throws IOException {
        String page = Validation.markdown(Proofs.run(""));
        if (Boolean.getBoolean("putback.write")) {
            Files.writeString(PAGE, page);
        }
        assertThat(Files.readString(PAGE))
                .as("docs/validation.md is stale; mvn -pl proof -am test -Dputback.write=true writes it anew")
                .isEqualTo(page);
    }

    @Test
    void aWrongFigure_isReported() {
        Case right = Proofs.run("plan").get(0);
        Case wrong = Case.exact(
                right.room(),
                right.id(),
                right.source(),
                right.at(),
                right.quantity(),
                right.expected().longValue() + 1,
                right.ours());
        assertThat(right.verdict()).isEqualTo(Verdict.AGREES);
        assertThat(wrong.verdict()).isEqualTo(Verdict.DISAGREES);
        assertThat(wrong.difference()).isEqualByComparingTo(BigDecimal.valueOf(-1));
    }

    @Test
    void assignment_isNoDearerThanAnyPath() {
        SopFile file = SopFile.parse(putback.proof.Files.text("planning/sop/ESC07.sop"));
        int[] known = {1, 4, 2, 7, 6, 5, 3, 8};
        long done = 0;
        int state = 0;
        long rest = 2125;
        for (int node : known) {
            assertThat(file.bound(done, state)).isLessThanOrEqualTo(rest);
            rest -= file.cost(state, node - 1);
            done |= 1L << node - 1;
            state = node;
        }
        assertThat(rest).isZero();
    }
}

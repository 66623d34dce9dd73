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
    private static final List<Case> CASES = Proofs.run("");

    @Test
    void noCase_disagreesWithoutAnExplanation() {
        assertThat(CASES).hasSizeGreaterThan(380);
        assertThat(CASES)
                .allSatisfy(one -> assertThat(one.verdict()).as(one.toString()).isNotEqualTo(Verdict.DISAGREES));
    }

    @Test
    void thePageOfValidation_isCurrent() throws IOException {
        String page = Validation.markdown(CASES);
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
    void aKnownDisagreement_isNotCountedAsAgreeing() {
        assertThat(CASES.stream().filter(one -> one.room().equals("plan") && one.verdict() == Verdict.KNOWN))
                .extracting(Case::id)
                .containsExactly("sop-p43.1");
        assertThat(CASES.stream().filter(one -> one.room().equals("tightening") && one.verdict() == Verdict.KNOWN))
                .extracting(Case::because)
                .allMatch(because -> because.startsWith("misprint") || because.startsWith("an older edition"))
                .hasSize(15);
        assertThat(CASES.stream().filter(one -> one.room().equals("labour") && one.verdict() == Verdict.KNOWN))
                .extracting(Case::because)
                .allMatch(because -> because.startsWith("misprint"))
                .hasSize(1);
        assertThat(CASES).extracting(Case::id).doesNotHaveDuplicates();
        assertThat(CASES).extracting(Case::because).doesNotContain("");
    }

    /** What is called a known disagreement has to be one: a misprint that we would reproduce is a fault of ours. */
    @Test
    void aKnownBadFigure_isNotReproduced() {
        assertThat(CASES.stream().filter(Case::known))
                .allSatisfy(one -> assertThat(one.verdict()).as(one.id()).isEqualTo(Verdict.KNOWN));
    }

    @Test
    void noBound_isAboveTheOptimum() {
        assertThat(CASES.stream().filter(one -> one.id().endsWith("-bound")))
                .hasSizeGreaterThan(5)
                .allSatisfy(one -> assertThat(one.ours()).as(one.id()).isLessThanOrEqualTo(one.expected()));
    }

    @Test
    void everyAnswerOfADataFile_isChecked() {
        for (String name : List.of("P10", "P10r", "P22", "P47")) {
            String file = putback.proof.Files.text("planning/dlbp/" + name + ".yaml");
            long answers = file.lines().filter(line -> line.contains("cost:")).count();
            assertThat(CASES.stream().filter(one -> one.id().startsWith("free-" + name + "-")))
                    .as(name)
                    .hasSize((int) answers);
        }
        for (Case one : CASES) {
            if (one.at().contains(".yaml")) {
                String name = one.at().substring("file ".length(), one.at().indexOf(".yaml"));
                String folder = one.id().startsWith("free-") ? "dlbp" : "andor";
                String file = putback.proof.Files.text("planning/" + folder + "/" + name + ".yaml");
                assertThat(file).as(one.id()).containsPattern("\\b" + one.expected() + "\\b");
            }
        }
    }

    @Test
    void anOrderOfTheList_costsWhatTheListSays() {
        SopFile file = SopFile.parse(putback.proof.Files.text("planning/sop/ESC12.sop"));
        int[] known = {4, 8, 10, 9, 7, 1, 3, 5, 11, 2, 6, 12, 13};
        long cost = 0;
        long done = 0;
        int state = 0;
        for (int node : known) {
            assertThat(file.ready(done) >> node - 1 & 1).as("node " + node).isOne();
            cost += file.cost(state, node - 1);
            done |= 1L << node - 1;
            state = node;
        }
        assertThat(cost).isEqualTo(OrderingCases.optima().get("ESC12"));
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

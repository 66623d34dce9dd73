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
import putback.sheet.JointKind;

class PlanCommandTest {
    private static final String LOCKED = """
            sheet: locked
            title: Two covers over each other's bolt
            parts: {one: {}, two: {}}
            joints:
              bolt-one: {joins: [one, body], kind: bolt, behind: [two]}
              bolt-two: {joins: [two, body], kind: bolt, behind: [one]}
            """;

    @TempDir
    private Path folder;

    @Test
    void rustAndHands_leaveTheStepsAlone_andALastLineSaysWhatTheWholeComesTo() {
        Said clean = Said.by("plan", "front-strut", "--renew", "strut", "--side", "left");
        Said rusty =
                Said.by("plan", "front-strut", "--renew", "strut", "--side", "left", "--rust", "4", "--hands", "2");
        assertThat(rusty.err()).isEmpty();
        assertThat(rusty.out()).startsWith(clean.out());
        assertThat(rusty.out().substring(clean.out().length()).replaceAll("\\s+", " "))
                .containsPattern("With rust 4 and 2 pairs of hands the car stands likely \\d+ min, 4 jobs in 5 no more")
                .contains("jobs in 100 end at a fixing that will not move", "minutes of the steps are those of clean");
    }

    @Test
    void plan_isTextWithoutColourWhereNoTerminalListens() {
        Said said = Said.by("plan", "front-strut", "--renew", "complete-strut", "--side", "left");
        assertThat(said.exit()).isEqualTo(Exit.DONE);
        assertThat(said.err()).isEmpty();
        assertThat(said.out()).contains("APART", "RENEW", "TOGETHER", "AFTERWARDS", "TOOLS", "PARTS", "proven");
        assertThat(said.out()).doesNotContain("\u001b");
        assertThat(said.out().lines()).allMatch(line -> line.length() <= 80);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "plan front-strut                                    | say what is to be renewed",
                "plan front-strut --renew ,                          | say what is to be renewed",
                "plan front-strut --renew strat                      | maybe strut",
                "plan front-strut --renew body                       | body is the car itself",
                "plan front-strut --renew strut --side middle        | --side is left, right or both",
                "plan front-strut --renew strut --rust 5             | --rust is 0 to 4",
                "plan front-strut --renew strut --hands 0            | --hands is 1 to 9",
                "plan front-strut --renew strut --hands two          | --hands is 1 to 9",
                "plan front-strut --renew left.strut --side right    | left.strut is not on the side that is asked for",
                "plan front-strut --renew strut --why 0              | --why is a step number",
                "plan front-strut --renew strut --why 9-8            | or a range such as 58-59",
                "plan front-strut --renew strut --why 8-5000         | this plan has the steps 1 to",
                "plan front-strut --renew strut --why 5000           | this plan has the steps 1 to",
                "plan front-strut --renew strut --json --svg x.svg   | --json and --svg do not go together",
                "plan front-strut --renew strut --json --why 3       | --json and --why do not go together",
                "plan front-strut --renew strut --paper a4           | --paper goes with --pdf FILE",
                "plan front-strut --renew strut --pdf no/such/x.pdf  | there is no folder",
                "plan front-strut --renew strut --pdf=               | the name of the file is empty",
                "plan front-strut --renew strut --pdf x.pdf --paper a5 | --paper is a4 or letter",
                "plan front-strat --renew strut                      | maybe front-strut",
                "plan --renew strut                                  | SHEET is missing",
                "plan front-strut --renew                            | the value is missing",
                "check front-strat                                   | maybe front-strut",
                "check                                               | SHEET is missing",
                "plam front-strut                                    | Maybe plan"
            })
    void wrongCall_isToldWhatIsRight(String call, String message) {
        Said said = Said.by(call.strip().split(" +"));
        assertThat(said.exit()).isEqualTo(Exit.BAD_INPUT);
        assertThat(said.err()).contains(message);
        assertThat(said.out()).isEmpty();
    }

    @Test
    void namesWithTheirSide_goWithThatSideOrBoth() {
        for (String side : new String[] {"left", "both"}) {
            assertThat(Said.by("plan", "front-strut", "--renew", "left.link", "--side", side)
                            .exit())
                    .isEqualTo(Exit.DONE);
        }
    }

    @Test
    void wordsThatWouldSteerTheTerminal_areNotEchoed() {
        String red = "a\u001b[31m\u009bb";
        for (String call : new String[] {"plan front-strut --renew #", "plan front-strut --renew x --side #", "#"}) {
            Said said = Said.by(call.replace("#", red).split(" "));
            assertThat(said.exit()).isEqualTo(Exit.BAD_INPUT);
            assertThat(said.err()).contains("a?[31m?b").doesNotContain("\u001b", "\u009b");
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"lower-arm", "Lower arm", "LOWERARM", "left lower arm", "left.lower-arm"})
    void partNamedAsOnTheLadder_isTaken(String name) {
        Said said = Said.by("plan", "front-strut", "--side", "left", "--renew", name);
        assertThat(said.exit()).isEqualTo(Exit.DONE);
        assertThat(said.out())
                .isEqualTo(Said.by("plan", "front-strut", "--side", "left", "--renew", "arm")
                        .out());
    }

    @Test
    void partNamedAsOnTheLadderAlmost_isHintedAtWithItsId() {
        assertThat(Said.by("plan", "front-strut", "--renew", "lower-arn").err()).contains("maybe arm (Lower arm)");
    }

    @Test
    void wordLikeNothing_isAnsweredWithIdsAndNamesInShortLines() {
        Said said = Said.by("plan", "front-strut", "--renew", "quux-and-more");
        assertThat(said.exit()).isEqualTo(Exit.BAD_INPUT);
        assertThat(said.err().replace('\n', ' ')).contains(" arm (Lower arm),");
        assertThat(said.err().lines()).hasSizeGreaterThan(3).allMatch(line -> line.length() <= 80);
    }

    @Test
    void sideOfWhatExistsOnce_isSaidAndTheRestGoesOn() {
        assertThat(Said.by("plan", "front-strut", "--renew", "left.rack").err())
                .contains("the rack exists once and has no side; write rack");
        Said said = Said.by("plan", "front-strut", "--renew", "rack", "--side", "left");
        assertThat(said.exit()).isEqualTo(Exit.DONE);
        assertThat(said.err().lines())
                .containsExactly("putback: front-strut: the rack exists once; --side changes nothing for it");
        assertThat(said.out())
                .isEqualTo(Said.by("plan", "front-strut", "--renew", "rack").out());
    }

    @Test
    void whyOfSeveralSteps_isToldStepByStep() {
        String call = "plan front-strut --renew link --side left --why 3";
        String three = Said.by(call.split(" ")).out();
        for (String dash : new String[] {"-", "\u2013"}) {
            Said said = Said.by((call + dash + "4").split(" "));
            assertThat(said.exit()).isEqualTo(Exit.DONE);
            assertThat(said.out()).startsWith(three).contains("Step 4: ").doesNotContain("Step 5: ");
        }
    }

    @Test
    void folderInsteadOfASheet_isAFaultOfTheInput() {
        for (String command : new String[] {"plan", "check"}) {
            Said said = command.equals("plan")
                    ? Said.by(command, folder.toString(), "--renew", "strut")
                    : Said.by(command, folder.toString());
            assertThat(said.exit()).isEqualTo(Exit.BAD_INPUT);
            assertThat(said.err()).startsWith(folder + ":1:1: ");
            assertThat(said.out()).isEmpty();
        }
    }

    @Test
    void partsThatLockEachOther_haveNoSoundOrder() throws IOException {
        Path sheet = Files.writeString(folder.resolve("locked.yaml"), LOCKED);
        for (String form : new String[] {"--json", "--side=both"}) {
            Said said = Said.by("plan", sheet.toString(), "--renew", "one", form);
            assertThat(said.exit()).isEqualTo(Exit.NO_SOUND_ANSWER);
            assertThat(said.err()).contains("There is no sound order").contains("Bolt one");
            assertThat(said.out()).isEmpty();
        }
    }

    @Test
    void faultySheet_isToldWithItsPlaces() throws IOException {
        Path sheet = Files.writeString(
                folder.resolve("bad.yaml"), LOCKED.replace("kind: bolt, behind: [two]", "kind: blot"));
        for (Said said :
                new Said[] {Said.by("check", sheet.toString()), Said.by("plan", sheet.toString(), "--renew", "one")}) {
            assertThat(said.exit()).isEqualTo(Exit.BAD_INPUT);
            assertThat(said.err()).startsWith(sheet + ":5:").contains("blot");
            assertThat(said.out()).isEmpty();
        }
    }

    @Test
    void soundSheet_isCounted() {
        Said said = Said.by("check", "twist-beam");
        assertThat(said.exit()).isEqualTo(Exit.DONE);
        assertThat(said.err()).isEmpty();
        assertThat(said.out())
                .matches("twist-beam: sound; \\d+ parts, \\d+ joints, \\d+ units?, both sides counted\\R");
    }

    @Test
    void rustAndHands_areSaidNotToBeReckoned_andChangeNothing() {
        Said plain = Said.by("plan", "front-strut", "--renew", "strut", "--json");
        Said rusty = Said.by("plan", "front-strut", "--renew", "strut", "--json", "--rust", "3", "--hands", "2");
        assertThat(rusty.out()).isEqualTo(plain.out());
        assertThat(rusty.err().lines()).hasSize(1).allMatch(line -> line.contains("clean fasteners"));
        assertThat(plain.err()).isEmpty();
    }

    @Test
    void svg_isWrittenToItsFile() throws IOException {
        Path file = folder.resolve("ladder.svg");
        Said said = Said.by("plan", "front-brake", "--renew", "disc", "--svg", file.toString());
        assertThat(said).isEqualTo(new Said(Exit.DONE, "", ""));
        assertThat(Files.readString(file)).startsWith("<svg").endsWith("</svg>\n");
    }

    @Test
    void svgThatCannotBeWritten_isSaidInOneLine() {
        String nowhere = folder.resolve("not/there.svg").toString();
        Said said = Said.by("plan", "front-brake", "--renew", "disc", "--svg", nowhere);
        assertThat(said.exit()).isEqualTo(Exit.FAILED);
        assertThat(said.err().lines())
                .containsExactly("putback: cannot write " + nowhere + ": there is no such folder");
        Said onFolder = Said.by("plan", "front-brake", "--renew", "disc", "--svg", folder.toString());
        assertThat(onFolder.exit()).isEqualTo(Exit.FAILED);
        assertThat(onFolder.err().lines()).hasSize(1);
    }

    @Test
    void why_leadsFromEachStepBackToWhatIsRenewed() {
        int steps = 0;
        while (true) {
            Said said = Said.by("plan", "twist-beam", "--renew", "spring", "--side", "left", "--why", "" + (steps + 1));
            if (said.exit() != Exit.DONE) {
                assertThat(said.err()).contains("1 to " + steps);
                break;
            }
            assertThat(said.out()).startsWith("Step " + (steps + 1) + ": ");
            assertThat(said.out().lines().count()).isGreaterThan(1);
            steps++;
        }
        assertThat(steps).isGreaterThan(20);
    }

    @Test
    void help_hasTheTableOfDefaultMinutes() {
        String help = Said.by("plan", "--help").out();
        for (JointKind kind : JointKind.values()) {
            assertThat(help)
                    .containsPattern("(?m)^  " + kind.word() + " +"
                            + kind.defaultOpen().decimal().toPlainString() + " +"
                            + kind.defaultClose().decimal().toPlainString() + "$");
        }
        assertThat(help.lines()).allMatch(line -> line.length() <= 80);
        assertThat(Said.by("--help").out()).contains("plan", "check");
    }
}

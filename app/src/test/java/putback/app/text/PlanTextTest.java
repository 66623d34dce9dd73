package putback.app.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import putback.app.fixtures.Plans;
import putback.plan.Plan;
import putback.plan.Planned;
import putback.plan.Planner;
import putback.plan.selection.WantedNames;
import putback.plan.steps.Step;
import putback.plan.tools.Limits;
import putback.sheet.Side;
import putback.store.sheets.Read;
import putback.store.sheets.SheetReader;

class PlanTextTest {
    private static final String COLOURS = "\u001b\\[\\d+m";

    static Stream<Plan> plans() {
        return Stream.of(
                plan("front-strut", "complete-strut"),
                plan("front-strut", "strut"),
                plan("twist-beam", "spring"),
                plan("front-brake", "disc"),
                Plans.awkwardNames(),
                Plans.tall(40));
    }

    private static Plan plan(String sheet, String renew) {
        Read.Sheet read = (Read.Sheet) SheetReader.open(sheet);
        WantedNames.Understood.Clear clear = (WantedNames.Understood.Clear)
                WantedNames.understand(read.assembly(), List.of(renew), Set.of(Side.LEFT, Side.RIGHT));
        return ((Planned.Sound) Planner.plan(read.assembly(), clear.wanted())).plan();
    }

    private static String text(Plan plan, int width) {
        return PlanText.of(plan, null, new Screen(width, false, false));
    }

    private static String joined(String text) {
        return text.replaceAll("[│├─○◌◐●]", " ").replaceAll("\\s+", " ");
    }

    @Test
    void whatIsOfferedUp_standsUnderTheHeadingOfItsFixing() {
        String together = text(plan("front-strut", "complete-arm"), 200);
        together = together.substring(together.indexOf("TOGETHER"));
        assertThat(together.lines().skip(1).findFirst().orElseThrow()).contains("underneath, ");
        assertThat(joined(together)).containsPattern("underneath, (left|right) \\d+ Offer up the new [a-z ]+, \\1");
    }

    @Test
    void footNamesTorqueWrenchStandsAndCompressor_withoutAToolbox() {
        Plan plan = plan("front-strut", "strut");
        String foot = text(plan, 200);
        foot = foot.substring(foot.indexOf("AIDS"), foot.indexOf("PARTS"));
        List<Integer> torqued = plan.steps().stream()
                .filter(step -> Limits.of(step) != null)
                .map(Step::number)
                .toList();
        assertThat(joined(foot))
                .containsPattern("torque wrench, for \\d+ N·m \\([0-9.]+ lbf·ft\\) to \\d+ N·m")
                .contains("spring compressor", "stands, put on in step")
                .contains(torqued.get(0) + ", " + torqued.get(1));
    }

    @ParameterizedTest
    @MethodSource("plans")
    void noLine_isWiderThanTheScreen(Plan plan) {
        for (int width : new int[] {40, 57, 80, 120}) {
            assertThat(text(plan, width).lines()).allMatch(line -> Letters.width(line) <= width);
            String ascii = PlanText.of(plan, null, new Screen(width, false, true));
            assertThat(ascii.lines()).allMatch(line -> line.length() <= width);
            assertThat(ascii).matches("(?s)[\\n\\x20-\\x7e]*");
        }
    }

    @ParameterizedTest
    @MethodSource("plans")
    void colour_addsNothingButColour(Plan plan) {
        String coloured = PlanText.of(plan, null, new Screen(80, true, false));
        assertThat(coloured).contains("\u001b[34m");
        assertThat(coloured.replaceAll(COLOURS, "")).isEqualTo(text(plan, 80));
    }

    @ParameterizedTest
    @MethodSource("plans")
    void everyCautionAndUndoing_isSaid(Plan plan) {
        String all = joined(text(plan, 120));
        for (Step step : plan.steps()) {
            for (String caution : step.cautions()) {
                assertThat(all).contains(joined(caution));
            }
        }
        assertThat(text(plan, 80).lines().filter(line -> line.startsWith("  ○")))
                .hasSameSizeAs(plan.selection().open());
    }

    @Test
    void startRunDownAndTighten_ofOneFixing_standOnOneLine() {
        String all = joined(text(plan("front-brake", "disc"), 120));
        assertThat(all)
                .containsPattern(
                        "\\d+–\\d+ Start disc screw, right by hand: M6\\. Run down until it touches\\. Tighten: 8 N·m");
        assertThat(all).doesNotContain("no tighter yet. Tighten");
    }

    @Test
    void wayOfStanding_isARuledLineWithItsSetUp() {
        assertThat(text(plan("twist-beam", "spring"), 80).lines().filter(line -> line.startsWith("───")))
                .hasSize(4)
                .allMatch(line -> line.endsWith("3.0") && line.length() == 80)
                .anyMatch(line -> line.contains("At ride height"));
    }

    @Test
    void torque_isInBothUnitsOrSaidToBeUnknown() {
        String link = joined(text(Plans.link(), 100));
        assertThat(joined(text(plan("front-brake", "disc"), 100))).contains("110 N·m (81 lbf·ft)");
        assertThat(link).contains("proven");
    }

    @Test
    void planThatIsNotProven_saysItsBound() {
        Plan link = Plans.link();
        Plan open = new Plan(
                link.assembly(),
                link.wanted(),
                link.selection(),
                link.moves(),
                link.setup(),
                link.sequenceSetup(),
                new putback.plan.Proof(false, putback.quantity.Minutes.of("1.25")),
                link.steps(),
                link.tools(),
                link.parts(),
                link.advice(),
                link.warnings());
        assertThat(joined(text(open, 80))).contains("the best found; it cannot be less than 1.3 min");
    }
}

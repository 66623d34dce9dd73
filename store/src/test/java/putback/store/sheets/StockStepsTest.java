package putback.store.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import putback.plan.Plan;
import putback.plan.Planned;
import putback.plan.Planner;
import putback.plan.selection.WantedNames;
import putback.plan.selection.WantedNames.Understood;
import putback.plan.steps.Act;
import putback.plan.steps.Step;
import putback.sheet.Assembly;
import putback.sheet.Joint;
import putback.sheet.Side;
import putback.sheet.SpringDoubts;

/** What the plans of the stock sheets say where somebody could be hurt. */
class StockStepsTest {
    private static Assembly sheet(String id) {
        return ((Read.Sheet) SheetReader.open(id)).assembly();
    }

    private static Plan plan(String sheet, String... renew) {
        Assembly assembly = sheet(sheet);
        Understood understood = WantedNames.understand(assembly, List.of(renew), Set.of(Side.LEFT, Side.RIGHT));
        return ((Planned.Sound) Planner.plan(assembly, ((Understood.Clear) understood).wanted())).plan();
    }

    private static int at(Plan plan, Act act, String id) {
        return plan.steps().stream()
                .filter(step -> step.act() == act && isOf(step, id))
                .mapToInt(Step::number)
                .findFirst()
                .orElseThrow(() -> new AssertionError("no " + act.word() + " of " + id));
    }

    private static boolean isOf(Step step, String id) {
        Joint joint = step.joint();
        return joint != null
                ? joint.id().equals(id)
                : step.part() != null && step.part().id().equals(id);
    }

    private static Step step(Plan plan, Act act, String id) {
        return plan.steps().get(at(plan, act, id) - 1);
    }

    @ParameterizedTest
    @ValueSource(strings = {"twist-beam", "demo-van"})
    void newBeam_isLetDown_thenBothSpringsComeOut_thenTheBeamIsUnbolted(String sheet) {
        Plan plan = plan(sheet, "beam");
        for (String side : List.of("left.", "right.")) {
            int out = at(plan, Act.TAKE_OFF, side + "spring");
            assertThat(at(plan, Act.UNDO, side + "damper-lower")).isLessThan(at(plan, Act.LET_DOWN, "beam"));
            assertThat(at(plan, Act.LET_DOWN, "beam")).isLessThan(at(plan, Act.UNDO, side + "upper-seat-on-body"));
            assertThat(out)
                    .isLessThan(at(plan, Act.UNDO, "left.bush-bolt"))
                    .isLessThan(at(plan, Act.UNDO, "right.bush-bolt"))
                    .isLessThan(at(plan, Act.TAKE_OFF, "beam"));
            assertThat(step(plan, Act.UNDO, side + "damper-lower").cautions())
                    .anyMatch(line -> line.startsWith("Spring under load"));
        }
    }

    @Test
    void newBeam_getsItsSpringsBeforeItIsRaisedForTheDampers() {
        Plan plan = plan("demo-van", "beam");
        int raised = plan.steps().stream()
                .filter(step -> step.act() == Act.JACK_UP)
                .mapToInt(Step::number)
                .max()
                .orElseThrow();
        for (String side : List.of("left.", "right.")) {
            assertThat(at(plan, Act.START, side + "bush-bolt")).isLessThan(at(plan, Act.OFFER_UP, side + "spring"));
            assertThat(at(plan, Act.START, side + "upper-seat-on-body")).isLessThan(raised);
            assertThat(at(plan, Act.START, side + "damper-lower")).isGreaterThan(raised);
        }
    }

    @Test
    void springWithItsSeats_isAsMuchUnderLoadAsTheSpring() {
        Plan plan = plan("demo-van", "spring-with-seats");
        for (String seat : List.of("left.upper-seat-on-body", "right.lower-seat-on-beam")) {
            assertThat(step(plan, Act.UNDO, seat).cautions())
                    .as(seat)
                    .anyMatch(line -> line.startsWith("Spring under load"));
        }
        assertThat(step(plan, Act.LET_DOWN, "beam").cautions())
                .anyMatch(line -> line.contains("only until the spring is loose"));
    }

    @Test
    void beamOnItsJack_namesHosesWiresAndCablesOfBothSides() {
        for (Act act : List.of(Act.SUPPORT, Act.LET_DOWN)) {
            assertThat(step(plan("twist-beam", "spring", "damper"), act, "beam").cautions())
                    .anyMatch(line ->
                            line.startsWith("Never let it hang on the brake hose at the caliper, left or right, or"
                                    + " the brake hose from body to beam, left or right:"))
                    .anyMatch(line -> line.startsWith("No pull on the wheel-speed sensor, left or right:"))
                    .anyMatch(line -> line.startsWith("No pull on the parking-brake cable, left or right:"));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"twist-beam", "demo-van"})
    void rearWheels_areNotTurnedToTheirLocks(String sheet) {
        assertThat(plan(sheet, "hose").steps()).extracting(Step::text).noneMatch(text -> text.contains("locks"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"front-strut", "front-brake"})
    void frontWheels_areTurnedToBothLocks(String sheet) {
        assertThat(plan(sheet, "hose").steps()).extracting(Step::text).anyMatch(text -> text.contains("both locks"));
    }

    @Test
    void rearPads_endWithTheLeverAndItsTravel() {
        assertThat(plan("demo-van", "pads").steps())
                .extracting(Step::text)
                .anyMatch(text -> text.contains("hand lever, check its travel"))
                .anyMatch(text -> text.startsWith("Brake fluid between its marks"))
                .anyMatch(text -> text.startsWith("Bed in the new brake pads"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"twist-beam", "demo-van", "front-strut", "front-brake"})
    void stockSheet_leavesNoDoubtAboutItsSprings(String sheet) {
        assertThat(SpringDoubts.of(sheet(sheet))).isEmpty();
    }
}

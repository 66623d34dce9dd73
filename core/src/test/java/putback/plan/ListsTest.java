package putback.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import putback.plan.steps.Cars;
import putback.plan.steps.Travelled;
import putback.sheet.Assembly;

/** Tools, parts and advice of a plan. */
class ListsTest {
    private static List<PartNeed> parts(Assembly car, String... names) {
        Travelled trip = Travelled.of(car, names);
        return PartList.of(car, trip.wanted(), trip.selection());
    }

    private static List<String> advice(Assembly car, String... names) {
        Travelled trip = Travelled.of(car, names);
        return Advice.of(car, trip.wanted(), trip.selection());
    }

    @Test
    void tools_comeInTheOrderOfTheirFirstUse_withWhatHolds() {
        List<ToolUse> tools = ToolList.of(Travelled.of(Cars.strut(), "left.arm").steps());
        assertThat(tools).extracting(ToolUse::tool).containsExactly("19 mm socket", "18 mm socket", "18 mm spanner");
        assertThat(tools).allSatisfy(tool -> assertThat(tool.steps()).isSorted());
    }

    @Test
    void unit_isOneItem_withoutItsParts() {
        assertThat(parts(Cars.strut(), "left.complete-strut", "left.spring"))
                .contains(new PartNeed(
                        "left.complete-strut", "Complete strut, left", 1, new BigDecimal("168.00"), "renew"))
                .extracting(PartNeed::id)
                .doesNotContain("left.spring");
    }

    @Test
    void axleSet_coversBothSides() {
        assertThat(parts(Cars.strut(), "disc"))
                .filteredOn(need -> need.id().contains("disc"))
                .containsExactly(new PartNeed("left.disc", "Disc, both sides", 1, new BigDecimal("80.00"), "renew"));
    }

    @Test
    void singleUseFasteners_areCountedByJoint() {
        assertThat(parts(Cars.strut(), "left.disc"))
                .contains(new PartNeed("left.caliper-bolts", "Caliper bolts, left", 2, null, "single-use"));
    }

    @Test
    void companions_areAdvice() {
        assertThat(advice(Cars.strut(), "strut"))
                .containsExactly(
                        "Top mount, left: usually renewed with strut, left; it is off anyway.",
                        "Top mount, right: usually renewed with strut, right; it is off anyway.");
    }

    @Test
    void halfAPair_isAdvice() {
        assertThat(advice(Cars.strut(), "left.strut", "left.top-mount"))
                .contains("Strut: renewed on the left only, though it goes in pairs across the axle.");
    }

    @Test
    void unitThatComesWithAJointClosed_isAdvice() {
        String onePiece = "Complete strut, left: comes in one piece, with 1 fixing fewer to close.";
        assertThat(advice(Cars.strut(), "left.strut", "left.top-mount")).contains(onePiece);
        assertThat(advice(Cars.strut(), "left.strut")).doesNotContain(onePiece);
        assertThat(advice(Cars.strut(), "left.complete-strut")).doesNotContain(onePiece);
    }
}

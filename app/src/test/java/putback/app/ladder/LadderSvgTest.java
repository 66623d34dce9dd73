package putback.app.ladder;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiConsumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.w3c.dom.Element;
import putback.app.fixtures.Plans;
import putback.plan.Plan;

/** The picture of the ladder. */
class LadderSvgTest {
    private static final Map<String, Plan> PLANS = new LinkedHashMap<>();

    static {
        PLANS.put("a link", Plans.link());
        PLANS.put("both struts", Plans.struts());
        PLANS.put("both struts closed in another order", Plans.strutsClosedOtherwise());
        PLANS.put("both struts, the left closed first", Plans.strutsClosedLeftFirst());
        PLANS.put("awkward names", Plans.awkwardNames());
        PLANS.put("one fixing", Plans.tall(1));
        PLANS.put("120 fixings", Plans.tall(120));
    }

    private static Stream<DynamicTest> everywhere(BiConsumer<Plan, LadderSize> check) {
        List<DynamicTest> tests = new ArrayList<>();
        PLANS.forEach((name, plan) -> {
            for (LadderSize size : LadderSize.values()) {
                tests.add(dynamicTest(name + ", " + size.word(), () -> check.accept(plan, size)));
            }
        });
        return tests.stream();
    }

    private static Drawn drawn(Plan plan, LadderSize size) {
        return Drawn.of(LadderSvg.draw(plan, size), size);
    }

    @TestFactory
    Stream<DynamicTest> picture_isXmlWithTitleAndDescription() {
        return everywhere((plan, size) -> {
            Element root = drawn(plan, size).root();
            assertThat(root.getTagName()).isEqualTo("svg");
            assertThat(root.getAttribute("role")).isEqualTo("img");
            List<String> ids = List.of(root.getAttribute("aria-labelledby").split(" ", -1));
            assertThat(ids)
                    .containsExactly(
                            drawn(plan, size).all("title").get(0).getAttribute("id"),
                            drawn(plan, size).all("desc").get(0).getAttribute("id"));
        });
    }

    @TestFactory
    Stream<DynamicTest> noText_standsOnAnother() {
        return everywhere((plan, size) -> {
            List<Drawn.Box> boxes = drawn(plan, size).boxes();
            for (int i = 0; i < boxes.size(); i++) {
                for (int k = i + 1; k < boxes.size(); k++) {
                    assertThat(boxes.get(i).meets(boxes.get(k)))
                            .as("%s on %s", boxes.get(i), boxes.get(k))
                            .isFalse();
                }
            }
        });
    }

    @TestFactory
    Stream<DynamicTest> noText_leavesThePicture() {
        return everywhere((plan, size) -> {
            Drawn drawn = drawn(plan, size);
            assertThat(drawn.boxes())
                    .allSatisfy(box -> assertThat(box.left()).isGreaterThanOrEqualTo(0))
                    .allSatisfy(box -> assertThat(box.right()).isLessThanOrEqualTo(drawn.width()));
        });
    }

    @TestFactory
    Stream<DynamicTest> everyOpenedFixing_hasItsPlaceOnBothRails() {
        return everywhere((plan, size) -> {
            Rails rails = Rails.of(plan);
            int opened = plan.selection().open().size();
            assertThat(rails.left().stream().filter(Cell::rungEnd)).hasSize(opened);
            assertThat(rails.right().stream().filter(Cell::rungEnd)).hasSize(opened);
        });
    }

    @TestFactory
    Stream<DynamicTest> samePlan_givesTheSamePicture() {
        return everywhere((plan, size) -> assertThat(LadderSvg.draw(plan, size)).isEqualTo(LadderSvg.draw(plan, size)));
    }

    @Test
    void lettering_isNeverSmallerThanTwelve() {
        for (LadderSize size : LadderSize.values()) {
            Columns columns = new Columns(size.wide());
            assertThat(Math.min(columns.smallSize, Math.min(columns.nameSize, columns.titleSize)))
                    .isGreaterThanOrEqualTo(12);
        }
    }

    @Test
    void torque_isShownInBothUnits() {
        assertThat(drawn(Plans.link(), LadderSize.WIDE).texts()).contains("90 N\u00b7m", "66 lbf\u00b7ft");
        assertThat(drawn(Plans.struts(), LadderSize.NARROW).texts()).contains("23 N\u00b7m", "17 lbf\u00b7ft");
    }

    @Test
    void torqueWithoutASource_standsInBrackets() {
        assertThat(drawn(Plans.struts(), LadderSize.NARROW).texts())
                .contains("(60 N\u00b7m + 90\u00b0)", "(44 lbf\u00b7ft + 90\u00b0)", "torque without a source");
        assertThat(drawn(Plans.link(), LadderSize.WIDE).texts()).doesNotContain("torque without a source");
    }

    @Test
    void torqueThatNobodyKnows_isADashedBox() {
        Drawn drawn = drawn(Plans.struts(), LadderSize.WIDE);
        assertThat(drawn.texts()).contains("not known");
        assertThat(drawn.count("rect", "pb-dash")).isEqualTo(1);
        assertThat(drawn(Plans.link(), LadderSize.WIDE).count("rect", "pb-dash"))
                .isZero();
    }

    @Test
    void fixingTightenedElsewhere_isOnlyStartedAtItsRung() {
        List<Cell> right = Rails.of(Plans.link()).right();
        assertThat(right.stream().map(cell -> cell.kind() + " " + cell.text()))
                .containsSubsequence(
                        "TIGHTENED Wheel nuts",
                        "HEIGHT Lower onto its wheels",
                        "TIGHTENED Link to bar",
                        "HEIGHT Load to ride height",
                        "STARTED Wheel nuts",
                        "JOINT Link to strut",
                        "STARTED Link to bar");
    }

    @Test
    void rungs_areLevelWhereTheWayBackIsTheReverse() {
        assertThat(drawn(Plans.struts(), LadderSize.WIDE).count("path", "pb-under"))
                .isZero();
    }

    @Test
    void rung_changesHeightOnlyWhereAFixingIsClosedElsewhere() {
        assertThat(drawn(Plans.strutsClosedOtherwise(), LadderSize.WIDE).count("path", "pb-under"))
                .isEqualTo(3);
    }

    @Test
    void markupInNames_staysText() {
        assertThat(drawn(Plans.awkwardNames(), LadderSize.WIDE).texts()).contains("A <corner> & its \"names\"");
    }

    @Test
    void paper_hasItsColoursWrittenOut() {
        assertThat(LadderSvg.draw(Plans.link(), LadderSize.PAPER)).doesNotContain("var(", "@media", "--pb");
        assertThat(LadderSvg.draw(Plans.link(), LadderSize.WIDE))
                .contains("@media (prefers-color-scheme:dark)", "@media print");
    }

    @Test
    void description_saysBothOrders() {
        String description =
                drawn(Plans.link(), LadderSize.NARROW).all("desc").get(0).getTextContent();
        assertThat(description)
                .isEqualTo("Opened in this order: Wheel nuts; Link to strut; Link to bar. Renewed: Stabiliser link. "
                        + "Closed in this order: Link to bar; Link to strut; Wheel nuts.");
    }

    @Test
    void twoSidesOfOneThing_areSaidOnce() {
        assertThat(Heading.renewed(Plans.struts())).isEqualTo("Complete strut, left and right");
        assertThat(Heading.renewed(Plans.link())).isEqualTo("Stabiliser link");
    }

    @Test
    void depth_countsTheLayersAbove() {
        Plan plan = Plans.link();
        Depths depths = Depths.of(plan);
        assertThat(plan.selection().open()).extracting(depths::of).containsExactly(0, 1, 1);
    }
}

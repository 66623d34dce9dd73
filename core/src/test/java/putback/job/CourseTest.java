package putback.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import putback.quantity.Parsed;

class CourseTest {
    private static final Standing ALL = new Standing(true, true, false, List.of(), List.of(), true, List.of());

    @Test
    void aJob_goesFromTheQuestionToTheHandover() {
        List<Stage> way = List.of(
                Stage.ASKED,
                Stage.LOOKED_OVER,
                Stage.PRICED,
                Stage.AGREED,
                Stage.UNDER_WAY,
                Stage.TOGETHER,
                Stage.HANDED_OVER);
        for (int i = 1; i < way.size(); i++) {
            assertThat(Course.move(way.get(i - 1), way.get(i), ALL)).isEqualTo(new Parsed.Value<>(way.get(i)));
        }
    }

    @Test
    void nothingComesApart_beforeSomebodySaidYes() {
        Standing none = new Standing(true, false, false, List.of(), List.of(), false, List.of());
        assertThat(Course.move(Stage.AGREED, Stage.UNDER_WAY, none).refusal()).contains("nobody has said yes");
        assertThat(Course.move(Stage.PRICED, Stage.UNDER_WAY, ALL).refusal()).contains("cannot be under way next");
    }

    @Test
    void aPriceAboveTheCeiling_asksAgain() {
        Standing over = new Standing(true, true, true, List.of(), List.of(), false, List.of());
        assertThat(Course.move(Stage.AGREED, Stage.UNDER_WAY, over).refusal()).contains("ask again");
    }

    @Test
    void aPriceAboveTheCeiling_isAskedAboutAgainBeforeTheCarIsHandedOver_too() {
        Standing over = new Standing(true, true, true, List.of(), List.of(), true, List.of());
        assertThat(Course.move(Stage.TOGETHER, Stage.HANDED_OVER, over).refusal())
                .contains("more than somebody said yes to")
                .contains("ask again");
    }

    @Test
    void aJobThatNobodyEverSaidYesTo_isNotHeldBackAtTheHandover() {
        Standing never = new Standing(true, false, false, List.of(), List.of(), true, List.of());
        assertThat(Course.move(Stage.TOGETHER, Stage.HANDED_OVER, never))
                .isEqualTo(new Parsed.Value<>(Stage.HANDED_OVER));
    }

    @Test
    void partsAreHereAndLookedAt_beforeAnythingComesApart_andNobodyAsksForTheOldOnesYet() {
        Standing missing = new Standing(true, true, false, List.of("Spring", "Damper"), List.of(), false, List.of());
        assertThat(Course.move(Stage.AGREED, Stage.UNDER_WAY, missing).refusal())
                .contains("Spring; Damper")
                .contains("right part by number and look")
                .doesNotContain("compare");
    }

    @Test
    void aJobThatOwes_isNotHandedOver() {
        Standing owing = new Standing(true, true, false, List.of(), List.of("a", "b", "c", "d"), true, List.of());
        assertThat(Course.move(Stage.TOGETHER, Stage.HANDED_OVER, owing).refusal())
                .contains("a; b; c and 1 more");
    }

    @Test
    void aCarThatIsApart_cannotBeDeclined() {
        assertThat(Course.move(Stage.PRICED, Stage.DECLINED, ALL).refusal()).contains("put it together first");
    }

    @Test
    void everyStage_isNamedAndFoundByItsWords() {
        for (Stage stage : Stage.values()) {
            assertThat(Stage.named(stage.words())).isEqualTo(stage);
        }
        assertThat(Stage.named("elsewhere")).isNull();
    }

    @Test
    void aCarThatMustNotBeDriven_isNotHandedOver_beforeTheOwnerHasAnswered() {
        Standing open = new Standing(true, true, false, List.of(), List.of(), true, List.of("ABS wire rubbed through"));
        assertThat(Course.move(Stage.TOGETHER, Stage.HANDED_OVER, open).refusal())
                .contains("the owner has not answered: ABS wire rubbed through");
    }
}

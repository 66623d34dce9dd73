package putback.plan.steps;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import putback.sheet.JointKind;
import putback.sheet.Station;

/** Old parts that go to scrap in one piece. */
class ScrappedTest {
    private static ASheet arm() {
        ASheet sheet = ASheet.oneSide();
        sheet.part("arm");
        sheet.part("bush");
        sheet.part("ball-joint");
        sheet.joint("arm-bolt", JointKind.BOLT, "bush", "body");
        sheet.joint("bush-in-arm", JointKind.PRESS, "bush", "arm")
                .at(Station.BENCH)
                .spoils("bush")
                .mark("note which way round it sits");
        sheet.joint("ball-joint-bolts", JointKind.BOLT, "ball-joint", "arm").at(Station.BENCH);
        sheet.joint("pinch-bolt", JointKind.BOLT, "ball-joint", "body");
        return sheet;
    }

    @Test
    void oldBush_staysInTheOldArm_andTheNewOneGoesIntoTheNewArm() {
        Travelled trip = Travelled.of(arm().assembly(), "arm");
        Step undo = trip.first(Act.UNDO, "bush-in-arm");
        assertThat(undo.text()).startsWith("Leave bush in arm together: both are renewed");
        assertThat(undo.tool()).isEmpty();
        assertThat(trip.at(Act.MARK, "bush-in-arm")).isLessThan(undo.number());
        assertThat(trip.first(Act.START, "bush-in-arm").text()).isEqualTo("Press bush in arm home.");
        Sound.check(trip, "arm");
    }

    @Test
    void partThatIsKept_isParted() {
        Travelled trip = Travelled.of(arm().assembly(), "arm");
        assertThat(trip.first(Act.UNDO, "ball-joint-bolts").text()).startsWith("Undo ball joint bolts");
    }

    @Test
    void jointThatAnotherOneWaitsFor_isOpened() {
        ASheet sheet = ASheet.oneSide();
        sheet.part("carrier");
        sheet.part("hub");
        sheet.part("bearing");
        sheet.joint("bolts", JointKind.BOLT, "carrier", "body");
        sheet.joint("hub-in-bearing", JointKind.PRESS, "hub", "bearing")
                .at(Station.BENCH)
                .spoils("bearing");
        sheet.joint("bearing-in-carrier", JointKind.PRESS, "bearing", "carrier")
                .at(Station.BENCH)
                .after("hub-in-bearing");
        Travelled trip = Travelled.of(sheet.assembly(), "hub", "bearing");
        assertThat(trip.first(Act.UNDO, "hub-in-bearing").text()).isEqualTo("Press hub in bearing apart.");
    }

    /** The plan opens it, as the rule of selection says; whoever stands there may know better. */
    @Test
    void jointOnTheCar_betweenTwoOldParts_isOpened_andSaidToBeNeedless() {
        ASheet sheet = ASheet.oneSide();
        sheet.part("arm");
        sheet.part("ball-joint");
        sheet.joint("pinch-bolt", JointKind.BOLT, "ball-joint", "body");
        sheet.joint("flange", JointKind.BOLT, "ball-joint", "arm");
        sheet.joint("arm-bolt", JointKind.BOLT, "arm", "body");
        Travelled both = Travelled.of(sheet.assembly(), "arm", "ball-joint");
        assertThat(both.first(Act.UNDO, "flange").text())
                .startsWith("Undo flange")
                .contains("Both are renewed: if they can come off in one piece, leave this shut");
        assertThat(both.first(Act.UNDO, "pinch-bolt").text()).doesNotContain("in one piece");
        Travelled arm = Travelled.of(sheet.assembly(), "arm");
        assertThat(arm.first(Act.UNDO, "flange").text()).doesNotContain("in one piece");
        Sound.check(both, "arm and ball joint");
    }

    @Test
    void smallEndLeftOnItsPivot_needsNoStrap_whereTheSheetSaysWhatElseIsLetGo() {
        ASheet sheet = ASheet.oneSide();
        sheet.part("arm");
        sheet.part("ball-joint");
        sheet.joint("stud", JointKind.TAPER, "ball-joint", "body").pivot();
        sheet.joint("flange", JointKind.BOLT, "ball-joint", "arm").letsGo("arm", "strap");
        sheet.joint("arm-bolt", JointKind.BOLT, "arm", "body").pivot();
        Travelled trip = Travelled.of(sheet.assembly(), "arm");
        assertThat(trip.all(Act.SUPPORT)).extracting(Step::part).hasSize(1);
        assertThat(trip.trip().warnings()).isEmpty();
    }
}

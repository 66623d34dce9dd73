package putback.plan.steps;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import putback.sheet.Height;
import putback.sheet.JointKind;
import putback.sheet.StoredEnergy;
import putback.sheet.TetherKind;

/** What is said of what a mechanic would otherwise find out on the road. */
class FinishingTest {
    private static ASheet drumBrake() {
        ASheet sheet = ASheet.oneSide();
        sheet.part("drum");
        sheet.part("shoes");
        sheet.part("hand-brake-cable").tether(TetherKind.CABLE);
        sheet.joint("drum-screw", JointKind.SCREW, "drum", "body");
        sheet.joint("shoes-in-place", JointKind.HOOK, "shoes", "body").behind("drum");
        sheet.joint("cable-hook", JointKind.HOOK, "hand-brake-cable", "shoes").behind("drum");
        sheet.joint("cable-end", JointKind.HOOK, "hand-brake-cable", "body");
        return sheet;
    }

    private static List<String> checks(Travelled trip) {
        return trip.all(Act.CHECK).map(Step::text).toList();
    }

    @Test
    void brakeWork_endsWithPedalFluidLeverAndBeddingIn_whereTheSheetSaysNoneOfThem() {
        assertThat(checks(Travelled.of(drumBrake().assembly(), "shoes")))
                .anyMatch(text -> text.startsWith("Pump the brake pedal until it is firm"))
                .anyMatch(text -> text.startsWith("Brake fluid between its marks"))
                .anyMatch(text -> text.startsWith("Parking brake: work the lever several times, check its travel"))
                .anyMatch(text -> text.startsWith("Bed in the new shoes as the maker says"));
    }

    @Test
    void brakeCheck_ownsUpToBeingCommonPractice() {
        assertThat(Travelled.of(drumBrake().assembly(), "shoes")
                        .all(Act.CHECK)
                        .filter(step -> step.text().startsWith("Brake fluid"))
                        .findFirst()
                        .orElseThrow()
                        .cautions())
                .contains("Common practice, no source: the maker's word rules.");
    }

    @Test
    void rideHeightThatIsSetByAJack_isMeasuredBeforeAnythingElse() {
        Travelled trip = Travelled.of(Cars.strut(), "left.arm");
        assertThat(trip.all(Act.HEIGHT).map(Step::text))
                .anyMatch(text -> text.contains("as measured when the car came in"));
        Step first = trip.trip().steps().get(0);
        assertThat(first.text()).startsWith("Measure hub centre to arch, left and right, and write it down");
        assertThat(first.act()).isEqualTo(Act.CHECK);
        assertThat(first.height()).isEqualTo(Height.ON_WHEELS);
        Sound.check(trip, "arm");
    }

    @Test
    void withoutRideHeight_nobodyMeasures() {
        assertThat(checks(Travelled.of(drumBrake().assembly(), "shoes"))).noneMatch(text -> text.startsWith("Measure"));
    }

    @Test
    void brakeCheckThatTheSheetBrings_isNotSaidTwice() {
        ASheet sheet = ASheet.oneSide();
        sheet.part("pads");
        sheet.joint("pads-in", JointKind.SEAT, "pads", "body").brings("pedal");
        sheet.followUp("pedal", "0.5", true, Height.RAISED);
        assertThat(checks(Travelled.of(sheet.assembly(), "pads")))
                .noneMatch(text -> text.contains("pedal"))
                .noneMatch(text -> text.contains("Parking brake"))
                .anyMatch(text -> text.startsWith("Brake fluid"));
    }

    @Test
    void springPad_isNoBrakePad() {
        ASheet sheet = ASheet.oneSide();
        sheet.part("spring-pad");
        sheet.part("clutch-disc");
        sheet.joint("in", JointKind.SEAT, "spring-pad", "body");
        sheet.joint("on", JointKind.BOLT, "clutch-disc", "body");
        assertThat(checks(Travelled.of(sheet.assembly(), "spring-pad", "clutch-disc")))
                .containsExactly("All aids off, tools and locking-nut key counted, nothing left on the car.");
    }

    private static String lookOver(ASheet sheet) {
        sheet.part("hose").tether(TetherKind.HOSE);
        sheet.joint("hose-clip", JointKind.CLIP, "hose", "body");
        return checks(Travelled.of(sheet.assembly(), "hose")).get(0);
    }

    @Test
    void linesAreLookedAtOnLock_onlyWhereTheWheelsSteer() {
        ASheet front = ASheet.oneSide();
        front.part("track-rod-end");
        assertThat(lookOver(front)).startsWith("Look over, with the wheels at both locks, at full droop and loaded: ");
        ASheet rear = ASheet.oneSide();
        rear.part("twist-beam");
        assertThat(lookOver(rear)).startsWith("Look over, with the wheels at full droop and loaded: ");
        assertThat(lookOver(ASheet.oneSide())).contains("at both locks where they steer: ");
    }

    @Test
    void newDisc_isComparedInWhatADiscIsMeasuredBy() {
        assertThat(Travelled.of(Cars.strut(), "left.disc")
                        .first(Act.RENEW, "left.disc")
                        .text())
                .endsWith("same diameter, thickness, height of the bell and holes?");
        assertThat(Travelled.of(Cars.beam(), "spring")
                        .first(Act.RENEW, "left.spring")
                        .text())
                .endsWith("same wire thickness, number of coils, free length and ends?");
    }

    @Test
    void partOfBothSides_namesTheLinesOfBothSides() {
        Travelled trip = Travelled.of(Cars.beam(), "spring");
        for (Act act : List.of(Act.SUPPORT, Act.LET_DOWN)) {
            assertThat(trip.first(act, "beam").cautions())
                    .anyMatch(line -> line.startsWith("Never let it hang on the hose, left or right: "));
        }
    }

    @Test
    void rodNut_isSeenASecondTime_beforeTheSpringIsLetGo() {
        Travelled trip = Travelled.of(Cars.strut(), "left.strut");
        assertThat(trip.at(Act.SECOND_LOOK, "left.rod-nut"))
                .isGreaterThan(trip.at(Act.TIGHTEN, "left.rod-nut"))
                .isLessThan(trip.last(Act.RELEASE, "left.spring"));
        assertThat(trip.last(Act.RELEASE, "left.spring")).isLessThan(trip.at(Act.OFFER_UP, "left.strut"));
    }

    @Test
    void newSpring_isWoundInUntilTheRodComesThrough_andWhatGoesOnItSaysWhere() {
        Travelled trip = Travelled.of(Cars.strut(), "left.strut", "left.spring", "left.top-mount");
        assertThat(trip.steps())
                .extracting(Step::text)
                .contains(
                        "Put the spring compressor on the new spring, left and wind it in until the thread comes through"
                                + " far enough for rod nut, left.",
                        "Put the new spring, left in place on the top mount, left.",
                        "Put the new spring, left, in one piece with top mount, in place on the strut, left.");
    }

    @Test
    void torqueThatBreaksTheBolt_isSaidAtTheStepAndStopsIt() {
        ASheet sheet = ASheet.oneSide();
        sheet.part("arm").stores(StoredEnergy.NONE);
        sheet.joint("bolt", JointKind.BOLT, "arm", "body").thread("M12x1.25").torque(980);
        List<String> cautions =
                Travelled.of(sheet.assembly(), "arm").first(Act.TIGHTEN, "bolt").cautions();
        assertThat(cautions.get(0)).startsWith("Do not pull this torque before the maker's data bear it out: ");
        assertThat(StopCautions.stops(cautions.get(0))).isTrue();
    }
}

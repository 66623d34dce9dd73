package putback.plan.steps;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import putback.sheet.Height;
import putback.sheet.JointKind;
import putback.sheet.Station;
import putback.sheet.TetherKind;

/** Which of the sound orders a mechanic would choose on the way back. */
class ClosingOrderTest {
    /** A carrier that goes to the bench with its hub, on a strut, an arm and a track rod, with a half-shaft through it. */
    private static ASheet hubCorner() {
        ASheet sheet = ASheet.oneSide();
        for (String part : List.of("wheel", "disc", "carrier", "hub", "strut", "arm", "rod")) {
            sheet.part(part);
        }
        sheet.part("shaft").tether(TetherKind.SHAFT);
        sheet.joint("wheel-nuts", JointKind.NUT, "wheel", "hub")
                .count(4)
                .hex(19)
                .breakLoose()
                .reachOnWheels()
                .tighten(Height.ON_WHEELS);
        sheet.joint("disc-screw", JointKind.SCREW, "disc", "hub")
                .tool("T30 bit")
                .behind("wheel");
        sheet.joint("strut-bolts", JointKind.BOLT_NUT, "strut", "carrier")
                .hex(18)
                .behind("wheel")
                .letsGo("carrier", "strap");
        sheet.joint("pinch-bolt", JointKind.BOLT_NUT, "arm", "carrier")
                .hex(16)
                .pivot()
                .behind("wheel");
        sheet.joint("taper", JointKind.TAPER, "rod", "carrier").hex(18).pivot().behind("wheel");
        sheet.joint("shaft-in-hub", JointKind.PRESS, "shaft", "hub")
                .tool("push-out tool")
                .behind("wheel");
        sheet.joint("hub-in-carrier", JointKind.PRESS, "hub", "carrier")
                .tool("press")
                .behind("disc", "strut")
                .at(Station.BENCH);
        sheet.joint("strut-nuts", JointKind.NUT, "strut", "body");
        sheet.joint("arm-bolt", JointKind.BOLT, "arm", "body").pivot();
        sheet.joint("rod-joint", JointKind.NUT, "rod", "body").pivot();
        sheet.joint("shaft-end", JointKind.CIRCLIP, "shaft", "body");
        return sheet;
    }

    @Test
    void halfShaft_goesInFirst_thenWhatHoldsTheCarrier_thenTheRest() {
        Travelled trip = Travelled.of(hubCorner().assembly(), "hub");
        assertThat(List.of(
                        trip.at(Act.START, "hub-in-carrier"),
                        trip.at(Act.START, "shaft-in-hub"),
                        trip.at(Act.START, "strut-bolts"),
                        Math.min(trip.at(Act.START, "pinch-bolt"), trip.at(Act.START, "taper")),
                        trip.at(Act.START, "disc-screw"),
                        trip.at(Act.START, "wheel-nuts")))
                .isSorted();
        Sound.check(trip, "hub");
    }

    @Test
    void disc_isPutOnOnlyWhenEveryFixingOfTheCarrierIsRunDown() {
        Travelled trip = Travelled.of(hubCorner().assembly(), "hub");
        for (String holds : List.of("strut-bolts", "pinch-bolt", "taper")) {
            assertThat(trip.at(Act.RUN_DOWN, holds)).as(holds).isLessThan(trip.at(Act.OFFER_UP, "disc"));
        }
    }

    @Test
    void carrierThatHangsOnItsHalfShaftAlone_isToBeHeldUp() {
        ASheet sheet = ASheet.oneSide();
        sheet.part("carrier");
        sheet.part("shaft").tether(TetherKind.SHAFT);
        sheet.joint("spline", JointKind.PRESS, "shaft", "carrier").after("bolts");
        sheet.joint("shaft-end", JointKind.CIRCLIP, "shaft", "body");
        sheet.joint("bolts", JointKind.BOLT, "carrier", "body");
        Travelled trip = Travelled.of(sheet.assembly(), "carrier");
        assertThat(trip.first(Act.START, "spline").cautions())
                .contains("Hold up the carrier until it is bolted: only flexible parts carry it.");
    }

    @Test
    void wheelsGetTheirLastTightening_beforeAnythingElseOnWheels() {
        ASheet sheet = ASheet.bothSides();
        sheet.part("wheel");
        sheet.part("cap");
        sheet.part("strut");
        sheet.joint("cap-clip", JointKind.CLIP, "cap", "wheel").height(Height.ON_WHEELS);
        sheet.joint("wheel-nuts", JointKind.NUT, "wheel", "body")
                .count(4)
                .hex(19)
                .after("cap-clip")
                .tighten(Height.ON_WHEELS)
                .reachOnWheels();
        sheet.joint("top-nuts", JointKind.NUT, "strut", "body")
                .hex(13)
                .at(Station.ENGINE_BAY)
                .behind("wheel")
                .reachOnWheels()
                .tighten(Height.ON_WHEELS);
        Travelled trip = Travelled.of(sheet.assembly(), "strut");
        int lowered = trip.numbers(Act.HEIGHT).max().orElseThrow();
        List<Integer> next = List.of(lowered + 1, lowered + 2);
        assertThat(List.of(trip.at(Act.TIGHTEN, "left.wheel-nuts"), trip.at(Act.TIGHTEN, "right.wheel-nuts")))
                .containsExactlyInAnyOrderElementsOf(next);
    }

    @Test
    void bleeding_isDoneBeforeTheWheelCoversTheUnions() {
        Travelled trip = Travelled.of(Cars.strut(), "left.hose");
        assertThat(List.of(
                        trip.at(Act.TIGHTEN, "left.hose-union"),
                        trip.at(Act.FOLLOW_UP, "bleed"),
                        trip.at(Act.FOLLOW_UP, "pedal"),
                        trip.at(Act.START, "left.wheel-nuts")))
                .isSorted();
    }

    @Test
    void whatIsSaidBeforeClosing_isNotSaidOfTheNewPartToo() {
        ASheet sheet = ASheet.oneSide();
        sheet.part("disc").prepare("wash it", "push the piston back");
        sheet.part("pads");
        sheet.joint("disc-screw", JointKind.SCREW, "disc", "body");
        sheet.joint("pads-in", JointKind.SEAT, "pads", "body").beforeClosing("push the piston back");
        assertThat(Travelled.of(sheet.assembly(), "disc").all(Act.PREPARE).count())
                .isEqualTo(2);
        assertThat(Travelled.of(sheet.assembly(), "disc", "pads").all(Act.PREPARE))
                .extracting(Step::text)
                .containsExactly("New disc: wash it.");
    }
}

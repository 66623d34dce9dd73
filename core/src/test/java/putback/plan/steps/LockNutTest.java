package putback.plan.steps;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import putback.sheet.Height;
import putback.sheet.JointKind;

/** A nut that is broken loose while another joint holds it, and tightened when a follow-up is done. */
class LockNutTest {
    private static Travelled trackRodEnd() {
        return Travelled.of(sheet().assembly(), "end");
    }

    private static ASheet sheet() {
        ASheet sheet = ASheet.oneSide();
        sheet.part("wheel");
        sheet.part("carrier");
        sheet.part("end");
        sheet.part("rod");
        sheet.joint("wheel-nuts", JointKind.NUT, "wheel", "carrier")
                .count(4)
                .breakLoose()
                .tighten(Height.ON_WHEELS)
                .reachOnWheels();
        sheet.joint("strut-bolts", JointKind.BOLT, "carrier", "body");
        sheet.joint("taper", JointKind.TAPER, "end", "carrier")
                .pivot()
                .critical()
                .behind("wheel");
        sheet.joint("lock-nut", JointKind.NUT, "end", "rod")
                .critical()
                .behind("wheel")
                .after("taper")
                .loosenBefore("taper")
                .mark("measure the thread")
                .tighten(Height.ON_WHEELS)
                .reachOnWheels()
                .tightenAfter("toe")
                .brings("toe");
        sheet.joint("rod-joint", JointKind.NUT, "rod", "body").pivot();
        sheet.followUp("toe", "35", false, Height.ANY);
        sheet.followUp("zero", "5", false, Height.ON_WHEELS, "toe");
        return sheet;
    }

    @Test
    void lockNut_isCrackedBeforeTheTaperIsBroken_andMarkedBeforeThat() {
        Travelled trip = trackRodEnd();
        assertThat(List.of(
                        trip.at(Act.MARK, "lock-nut"),
                        trip.at(Act.BREAK_LOOSE, "lock-nut"),
                        trip.at(Act.UNDO, "taper"),
                        trip.at(Act.UNDO, "lock-nut")))
                .isSorted();
        Step crack = trip.first(Act.BREAK_LOOSE, "lock-nut");
        assertThat(crack.text()).isEqualTo("Break loose lock nut while taper still holds: a quarter turn, no more.");
        assertThat(crack.height()).isEqualTo(Height.RAISED);
        assertThat(trip.count(Act.MARK, "lock-nut")).isEqualTo(1);
        Sound.check(trip, "lock nut");
    }

    @Test
    void lockNut_isOnlyRunDownUntilToeIsSet_thenTightenedAndLookedAt() {
        Travelled trip = trackRodEnd();
        assertThat(List.of(
                        trip.at(Act.RUN_DOWN, "lock-nut"),
                        trip.at(Act.TIGHTEN, "taper"),
                        trip.at(Act.TIGHTEN, "wheel-nuts"),
                        trip.at(Act.FOLLOW_UP, "toe"),
                        trip.at(Act.TIGHTEN, "lock-nut"),
                        trip.at(Act.SECOND_LOOK, "lock-nut")))
                .isSorted();
        assertThat(trip.first(Act.RUN_DOWN, "lock-nut").text()).endsWith("; it is tightened after this: toe.");
        assertThat(trip.trip().warnings()).isEmpty();
    }

    @Test
    void followUpsAfterIt_waitForTheLockNutToo() {
        ASheet sheet = sheet();
        sheet.part("sensor");
        sheet.joint("sensor-clip", JointKind.CLIP, "sensor", "rod").brings("zero");
        Travelled trip = Travelled.of(sheet.assembly(), "end", "sensor");
        assertThat(List.of(
                        trip.at(Act.FOLLOW_UP, "toe"),
                        trip.at(Act.TIGHTEN, "lock-nut"),
                        trip.at(Act.FOLLOW_UP, "zero")))
                .isSorted();
    }

    @Test
    void minutesOfTheCrack_areTakenFromTheOpening() {
        Travelled trip = trackRodEnd();
        Step crack = trip.first(Act.BREAK_LOOSE, "lock-nut");
        Step undo = trip.first(Act.UNDO, "lock-nut");
        assertThat(crack.minutes().plus(undo.minutes()))
                .isEqualTo(undo.joint().entry().open());
    }
}

package putback.plan.steps;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import putback.sheet.JointKind;
import putback.sheet.SpringDoubts;
import putback.sheet.Station;
import putback.sheet.StoredEnergy;

/** A spring that stands on pads between a beam on a jack and the body. */
class StandingSpringTest {
    /** Hung from one damper and one hinge; the seats say what comes first where the sheet is a good one. */
    private static ASheet axle(boolean good) {
        ASheet sheet = ASheet.oneSide();
        sheet.part("beam");
        sheet.part("damper").stores(StoredEnergy.GAS);
        sheet.part("spring").stores(StoredEnergy.SPRING);
        sheet.part("cup");
        sheet.part("pad");
        sheet.joint("damper-bolt", JointKind.BOLT_NUT, "damper", "beam").letsDown("beam", "jack");
        sheet.joint("damper-top", JointKind.BOLT, "damper", "body");
        sheet.joint("hinge", JointKind.BOLT_NUT, "beam", "body").pivot().letsDown("beam", "jack");
        String[] first = good ? new String[] {"hinge"} : new String[0];
        sheet.joint("cup-seat", JointKind.SEAT, "cup", "body")
                .after("damper-bolt")
                .aheadOf(first);
        sheet.joint("spring-top", JointKind.SEAT, "spring", "cup")
                .after("damper-bolt")
                .aheadOf(first);
        sheet.joint("spring-bottom", JointKind.SEAT, "spring", "pad")
                .after("damper-bolt")
                .aheadOf(first);
        sheet.joint("pad-seat", JointKind.SEAT, "pad", "beam")
                .after("damper-bolt", "cup-seat")
                .aheadOf(first);
        return sheet.unit("spring-set", "50.00", "spring", "cup", "pad");
    }

    @Test
    void beamUnderASpring_isLetDown_thenTheSpringComesOutInAStepOfItsOwn_thenTheHingeIsOpened() {
        Travelled trip = Travelled.of(axle(true).assembly(), "beam");
        int down = trip.at(Act.LET_DOWN, "beam");
        assertThat(trip.at(Act.UNDO, "damper-bolt")).isLessThan(down);
        assertThat(down).isLessThan(trip.at(Act.UNDO, "cup-seat"));
        assertThat(trip.first(Act.TAKE_OFF, "spring").text())
                .isEqualTo("Take off the spring, in one piece with cup and pad.");
        assertThat(trip.at(Act.TAKE_OFF, "spring")).isLessThan(trip.at(Act.UNDO, "hinge"));
        assertThat(trip.trip().warnings()).isEmpty();
        Sound.check(trip, "beam under a spring");
    }

    @Test
    void beamUnderASpring_isRaisedForItsHinge_andRaisedAgainWhenTheSpringIsIn() {
        Travelled trip = Travelled.of(axle(true).assembly(), "beam");
        assertThat(trip.at(Act.START, "hinge")).isLessThan(trip.at(Act.OFFER_UP, "spring"));
        List<Integer> raised = trip.numbers(Act.JACK_UP).boxed().toList();
        assertThat(raised.get(raised.size() - 1))
                .isGreaterThan(trip.at(Act.START, "cup-seat"))
                .isEqualTo(trip.at(Act.START, "damper-bolt") - 1);
    }

    @Test
    void unitOfASpringWithItsSeats_keepsTheCautionsOfTheSpring() {
        Travelled trip = Travelled.of(axle(true).assembly(), "spring-set");
        for (String seat : List.of("cup-seat", "pad-seat")) {
            assertThat(trip.first(Act.UNDO, seat).cautions()).as(seat).contains(Cautions.SPRING);
            assertThat(trip.first(Act.START, seat).cautions())
                    .as(seat)
                    .anyMatch(line -> line.startsWith("Spring ends in their seats"));
        }
        assertThat(trip.first(Act.LET_DOWN, "beam").cautions())
                .contains("Spring under load: down only until the spring is loose in its seats, and no further.");
    }

    @Test
    void beamWhoseSpringStaysIn_isKeptUpOnItsJack() {
        Travelled trip = Travelled.of(axle(true).assembly(), "damper");
        assertThat(trip.first(Act.UNDO, "damper-bolt").cautions()).contains(Cautions.SPRING_STAYS);
        assertThat(trip.numbers(Act.LET_DOWN)).isEmpty();
    }

    @Test
    void springLeftInOneSeat_isToBeLiftedOut() {
        Travelled trip = Travelled.of(axle(true).assembly(), "cup");
        assertThat(trip.first(Act.UNDO, "cup-seat").cautions()).anyMatch(line -> line.contains("lift it out"));
    }

    @Test
    void lastFixingThatKeepsASpringIn_isNotOpenedWithoutAWord_whereTheSheetNamesNoAid() {
        ASheet sheet = ASheet.oneSide();
        sheet.part("arm");
        sheet.part("spring").stores(StoredEnergy.SPRING);
        sheet.joint("ball-joint", JointKind.TAPER, "arm", "body");
        sheet.joint("arm-bolt", JointKind.BOLT, "arm", "body").at(Station.UNDERNEATH);
        sheet.joint("top", JointKind.SEAT, "spring", "body").after("ball-joint", "arm-bolt");
        sheet.joint("bottom", JointKind.SEAT, "spring", "arm").after("ball-joint", "arm-bolt");
        Travelled trip = Travelled.of(sheet.assembly(), "arm");
        assertThat(trip.first(Act.UNDO, "ball-joint").cautions())
                .noneMatch(line -> line.contains("nothing else keeps"));
        assertThat(trip.first(Act.UNDO, "arm-bolt").cautions())
                .anyMatch(line -> line.startsWith("Spring under load: nothing else keeps it in"));
        assertThat(trip.trip().warnings())
                .anyMatch(line -> line.contains("With arm bolt open nothing keeps the spring in"));
    }

    @Test
    void sheetThatLetsABeamDownAndNeverSaysThatTheSpringIsOutFirst_isDoubtful() {
        assertThat(SpringDoubts.of(axle(true).assembly())).isEmpty();
        assertThat(SpringDoubts.of(axle(false).assembly()))
                .singleElement()
                .asString()
                .startsWith(
                        "joint hinge: it lets down what spring stands on, and nothing says that the spring is out first");
    }

    @Test
    void seatThatOpensUnderLoad_isDoubtful() {
        ASheet sheet = ASheet.oneSide();
        sheet.part("spring").stores(StoredEnergy.SPRING);
        sheet.part("arm");
        sheet.joint("arm-bolt", JointKind.BOLT, "arm", "body");
        sheet.joint("top", JointKind.SEAT, "spring", "body").after("arm-bolt");
        sheet.joint("bottom", JointKind.SEAT, "spring", "arm");
        assertThat(SpringDoubts.of(sheet.assembly()))
                .hasSize(2)
                .allMatch(line -> line.contains("it can be opened while spring is under load"));
    }

    @Test
    void springThatGoesIntoItsCompressor_isNotDoubtful() {
        assertThat(SpringDoubts.of(Cars.strut())).isEmpty();
        assertThat(SpringDoubts.of(Cars.beam())).isEmpty();
    }
}

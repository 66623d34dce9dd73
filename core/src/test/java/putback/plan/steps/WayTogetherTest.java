package putback.plan.steps;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import putback.quantity.Length;
import putback.sheet.Height;
import putback.sheet.JointKind;
import putback.sheet.Station;

class WayTogetherTest {
    @Test
    void wholeRoundTrip_isSound() {
        Sound.check(Travelled.of(Cars.strut(), "strut", "disc", "arm"), "strut, disc, arm");
        Sound.check(Travelled.of(Cars.strut(), "complete-strut"), "complete strut");
        Sound.check(Travelled.of(Cars.beam(), "spring", "damper"), "beam");
    }

    @Test
    void sameTrip_hasTheSameSteps() {
        assertThat(Travelled.of(Cars.strut(), "strut", "arm").steps())
                .isEqualTo(Travelled.of(Cars.strut(), "strut", "arm").steps());
    }

    @Test
    void capOverTopNuts_goesBackAfterTheyAreTightOnWheels() {
        Travelled trip = Travelled.of(Cars.strut(), "left.strut");
        Step tighten = trip.first(Act.TIGHTEN, "left.top-nuts");
        assertThat(tighten.height()).isEqualTo(Height.ON_WHEELS);
        assertThat(trip.at(Act.OFFER_UP, "left.strut-cap")).isGreaterThan(tighten.number());
        assertThat(trip.at(Act.SECOND_LOOK, "left.top-nuts"))
                .isBetween(tighten.number(), trip.at(Act.START, "left.strut-cap-clip"));
    }

    @Test
    void bushBehindTheWheel_isTightenedAtRideHeight_withTheWheelOff() {
        Travelled trip = Travelled.of(Cars.strut(), "left.arm");
        assertThat(trip.all(Act.HEIGHT).map(Step::height))
                .containsExactly(Height.RAISED, Height.RIDE_HEIGHT, Height.RAISED, Height.ON_WHEELS);
        assertThat(trip.at(Act.START, "left.wheel-nuts")).isGreaterThan(trip.at(Act.TIGHTEN, "left.arm-front"));
        Step load = trip.all(Act.HEIGHT)
                .filter(step -> step.height() == Height.RIDE_HEIGHT)
                .findFirst()
                .orElseThrow();
        assertThat(load.text()).contains("jack under the arm or hub");
    }

    @Test
    void bushThatIsReachedUnderTheWheel_needsNoExtraLift() {
        ASheet sheet = ASheet.oneSide();
        sheet.part("wheel");
        sheet.part("arm");
        sheet.joint("nuts", JointKind.NUT, "wheel", "body").count(5).tighten(Height.ON_WHEELS);
        sheet.joint("bush", JointKind.BOLT, "arm", "body")
                .behind("wheel")
                .reachOnWheels()
                .tighten(Height.ON_WHEELS);
        Travelled trip = Travelled.of(sheet.assembly(), "arm");
        assertThat(trip.all(Act.HEIGHT).map(Step::height)).containsExactly(Height.RAISED, Height.ON_WHEELS);
        assertThat(trip.at(Act.RUN_DOWN, "bush")).isLessThan(trip.at(Act.START, "nuts"));
        Sound.check(trip, "bush under the wheel");
    }

    @Test
    void jointTightenedOnWheelsBehindItsOwnWheel_isWarnedOf_andTheCarStillGoesTogether() {
        ASheet sheet = ASheet.oneSide();
        sheet.part("wheel");
        sheet.part("strut");
        sheet.joint("nuts", JointKind.NUT, "wheel", "body").count(5);
        sheet.joint("strut-bolt", JointKind.BOLT, "strut", "body")
                .behind("wheel")
                .tighten(Height.ON_WHEELS);
        Travelled trip = Travelled.of(sheet.assembly(), "strut");
        assertThat(trip.trip().warnings()).anyMatch(line -> line.startsWith("Strut bolt is to be tightened on wheels"));
        assertThat(trip.first(Act.TIGHTEN, "strut-bolt").height()).isEqualTo(Height.ON_WHEELS);
        Sound.check(trip, "behind its own wheel");
    }

    @Test
    void wheelNuts_areRunDownRaised_andTightenedOnWheels_crosswise() {
        Travelled trip = Travelled.of(Cars.strut(), "left.arm");
        assertThat(trip.first(Act.RUN_DOWN, "left.wheel-nuts").height()).isEqualTo(Height.RAISED);
        Step tighten = trip.first(Act.TIGHTEN, "left.wheel-nuts");
        assertThat(tighten.height()).isEqualTo(Height.ON_WHEELS);
        assertThat(tighten.stages())
                .containsExactly(
                        "half the torque crosswise: 55 N·m (41 lbf·ft)",
                        "full torque crosswise: 110 N·m (81 lbf·ft)",
                        "once more round");
    }

    @Test
    void torqueThenAngle_isTwoStages() {
        Step tighten = Travelled.of(Cars.strut(), "left.arm").first(Act.TIGHTEN, "left.arm-front");
        assertThat(tighten.stages()).containsExactly("60 N·m (44 lbf·ft)", "90° further");
        assertThat(tighten.text()).contains("then 90° further").contains("source not given");
    }

    @Test
    void allThatCanBeStarted_isStartedBeforeAnyIsRunDown() {
        Travelled trip = Travelled.of(Cars.strut(), "left.strut");
        assertThat(trip.at(Act.START, "left.link-to-strut")).isLessThan(trip.at(Act.RUN_DOWN, "left.strut-to-carrier"));
    }

    @Test
    void newPart_bringsItsOwnFastener() {
        Travelled trip = Travelled.of(Cars.strut(), "left.strut");
        Step undo = trip.first(Act.UNDO, "left.strut-to-carrier");
        Step tighten = trip.first(Act.TIGHTEN, "left.strut-to-carrier");
        assertThat(undo.tool()).isEqualTo("18 mm socket");
        assertThat(tighten.tool()).isEqualTo("17 mm socket");
        assertThat(tighten.fastener().hex()).isEqualTo(new Length(17));
        assertThat(tighten.text()).contains("55 N·m (41 lbf·ft)").contains("garage's own record");
        assertThat(Travelled.of(Cars.strut(), "left.carrier")
                        .first(Act.TIGHTEN, "left.strut-to-carrier")
                        .tool())
                .isEqualTo("18 mm socket");
    }

    @Test
    void newUnit_bringsThePartsFastenerToo() {
        assertThat(Travelled.of(Cars.strut(), "left.complete-strut")
                        .first(Act.TIGHTEN, "left.strut-to-carrier")
                        .tool())
                .isEqualTo("17 mm socket");
    }

    @Test
    void newSpring_hasACompressorOfItsOwn() {
        Travelled trip = Travelled.of(Cars.strut(), "left.spring");
        assertThat(trip.count(Act.SUPPORT, "left.spring")).isEqualTo(2);
        assertThat(trip.count(Act.RELEASE, "left.spring")).isEqualTo(2);
        assertThat(trip.at(Act.RELEASE, "left.spring")).isLessThan(trip.at(Act.RENEW, "left.spring"));
        assertThat(trip.last(Act.SUPPORT, "left.spring")).isLessThan(trip.at(Act.START, "left.rod-nut"));
        assertThat(trip.last(Act.RELEASE, "left.spring")).isGreaterThan(trip.at(Act.TIGHTEN, "left.rod-nut"));
    }

    @Test
    void oldSpring_keepsItsCompressorUntilTheNutIsTight() {
        Travelled trip = Travelled.of(Cars.strut(), "left.strut");
        assertThat(trip.count(Act.SUPPORT, "left.spring")).isEqualTo(1);
        assertThat(trip.at(Act.RELEASE, "left.spring")).isGreaterThan(trip.at(Act.TIGHTEN, "left.rod-nut"));
    }

    @Test
    void beam_isRaisedAgainBeforeTheJointThatLetItGoIsStarted() {
        Travelled trip = Travelled.of(Cars.beam(), "spring");
        int first = Math.min(trip.at(Act.START, "left.damper-bottom"), trip.at(Act.START, "right.damper-bottom"));
        assertThat(trip.at(Act.JACK_UP, "beam")).isLessThan(first);
        assertThat(trip.at(Act.START, "left.spring-seat")).isLessThan(trip.at(Act.JACK_UP, "beam"));
        assertThat(trip.at(Act.RELEASE, "beam"))
                .isLessThan(trip.firstAt(step -> step.act() == Act.HEIGHT && step.height() == Height.RIDE_HEIGHT));
    }

    @Test
    void newPart_isComparedAndPreparedBeforeItIsOfferedUp() {
        Travelled trip = Travelled.of(Cars.strut(), "left.strut");
        assertThat(List.of(
                        trip.at(Act.RENEW, "left.strut"),
                        trip.at(Act.PREPARE, "left.strut"),
                        trip.at(Act.OFFER_UP, "left.strut")))
                .isSorted();
        assertThat(trip.first(Act.PREPARE, "left.strut").text()).contains("rod drawn out");
    }

    @Test
    void taperIsCleaned_andSingleUseSaid_atTheirStart() {
        assertThat(Travelled.of(Cars.strut(), "left.arm")
                        .first(Act.CLEAN, "left.ball-joint")
                        .text())
                .contains("clean taper, dry");
        assertThat(Travelled.of(Cars.strut(), "left.disc")
                        .first(Act.START, "left.caliper-bolts")
                        .text())
                .isEqualTo("Start caliper bolts, left by hand: 2 new ones.");
    }

    @Test
    void unknownTorque_isSaidSo() {
        Step tighten = Travelled.of(Cars.strut(), "left.disc").first(Act.TIGHTEN, "left.disc-screw");
        assertThat(tighten.text()).isEqualTo("Tighten disc screw, left: torque not known.");
        assertThat(tighten.cautions()).contains("Torque not known: take it from the maker's data.");
        assertThat(tighten.tool()).isEqualTo("T30 bit");
    }

    @Test
    void pedalIsPumpedAfterBleeding_andBeforeTheCarMoves() {
        Travelled trip = Travelled.of(Cars.strut(), "left.caliper");
        int lowered = trip.numbers(Act.HEIGHT).max().orElseThrow();
        assertThat(List.of(trip.at(Act.FOLLOW_UP, "bleed"), trip.at(Act.FOLLOW_UP, "pedal"), lowered))
                .isSorted();
    }

    @Test
    void anglesComeLast_onWheels() {
        Travelled trip = Travelled.of(Cars.strut(), "left.strut");
        Step angles = trip.first(Act.FOLLOW_UP, "angles");
        assertThat(angles.height()).isEqualTo(Height.ON_WHEELS);
        assertThat(angles.number()).isGreaterThan(trip.at(Act.TIGHTEN, "left.wheel-nuts"));
    }

    @Test
    void lastSteps_lookAtTheLinesAndCountTheTools() {
        Travelled trip = Travelled.of(Cars.strut(), "left.disc");
        List<Step> steps = trip.steps();
        assertThat(steps)
                .extracting(Step::text)
                .anyMatch(
                        text -> text.startsWith("Look over, with the wheels at full droop and loaded, and at both locks"
                                + " where they steer: the hose, left"));
        assertThat(steps.get(steps.size() - 1).text()).contains("tools");
    }

    @Test
    void jobInTheEngineBay_neverLiftsTheCar() {
        ASheet sheet = ASheet.oneSide();
        sheet.part("lid");
        sheet.part("filter");
        sheet.joint("lid-clip", JointKind.CLIP, "lid", "body")
                .at(Station.ENGINE_BAY)
                .height(Height.ANY);
        sheet.joint("filter-screw", JointKind.SCREW, "filter", "body")
                .at(Station.ENGINE_BAY)
                .height(Height.ANY)
                .behind("lid");
        Travelled trip = Travelled.of(sheet.assembly(), "filter");
        assertThat(trip.all(Act.HEIGHT)).isEmpty();
        Sound.check(trip, "engine bay");
    }

    @Test
    void aheadOf_closesTheOtherWayRound() {
        Travelled trip = Travelled.of(Cars.strut(), "left.strut");
        assertThat(trip.at(Act.UNDO, "left.strut-to-carrier")).isLessThan(trip.at(Act.UNDO, "left.top-nuts"));
        assertThat(trip.at(Act.START, "left.top-nuts")).isLessThan(trip.at(Act.START, "left.strut-to-carrier"));
    }

    @Test
    void why_isFilledInByWhoeverKnows() {
        Step step = Travelled.of(Cars.strut(), "left.disc").trip().steps().get(4);
        assertThat(step.why()).isEmpty();
        assertThat(step.withWhy(List.of("for 5")).why()).containsExactly("for 5");
    }
}

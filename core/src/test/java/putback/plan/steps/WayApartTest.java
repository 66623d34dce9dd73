package putback.plan.steps;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import putback.quantity.Minutes;
import putback.sheet.Height;
import putback.sheet.JointKind;
import putback.sheet.Station;
import putback.sheet.StoredEnergy;
import putback.sheet.TetherKind;

class WayApartTest {
    @Test
    void wheelFasteners_areBrokenLooseOnWheels_onceTheirCapIsOff() {
        Travelled trip = Travelled.of(Cars.strut(), "left.strut");
        assertThat(trip.numbers(Act.HEIGHT).min()).hasValue(4);
        assertThat(trip.steps().subList(0, 3))
                .extracting(Step::act)
                .containsExactly(Act.UNDO, Act.TAKE_OFF, Act.BREAK_LOOSE);
        assertThat(trip.first(Act.BREAK_LOOSE, "left.wheel-nuts").height()).isEqualTo(Height.ON_WHEELS);
    }

    @Test
    void capThatMovesBringLate_comesForward_andTheMovesSaySo() {
        ASheet sheet = ASheet.oneSide();
        sheet.part("wheel");
        sheet.part("cap");
        sheet.part("arm");
        sheet.joint("arm-bolt", JointKind.BOLT, "arm", "body");
        sheet.joint("nuts", JointKind.NUT, "wheel", "body")
                .count(4)
                .breakLoose()
                .reachOnWheels("cap");
        sheet.joint("clip", JointKind.CLIP, "cap", "wheel").height(Height.ANY);
        Travelled trip = Travelled.of(sheet.assembly(), "arm", "wheel");
        assertThat(trip.moves()).isNotEqualTo(trip.trip().moves());
        assertThat(trip.at(Act.UNDO, "clip")).isLessThan(trip.at(Act.BREAK_LOOSE, "nuts"));
        assertThat(trip.at(Act.BREAK_LOOSE, "nuts")).isLessThan(trip.firstAt(step -> step.act() == Act.HEIGHT));
        assertThat(trip.trip().warnings()).isEmpty();
        Sound.check(trip, "cap comes late");
    }

    @Test
    void whatIsInTheWayOnWheelsAndComesOffRaised_isWarnedOf() {
        ASheet sheet = ASheet.oneSide();
        sheet.part("wheel");
        sheet.part("guard");
        sheet.joint("guard-bolt", JointKind.BOLT, "guard", "body");
        sheet.joint("nuts", JointKind.NUT, "wheel", "body").breakLoose().reachOnWheels("guard");
        Travelled trip = Travelled.of(sheet.assembly(), "wheel");
        assertThat(trip.trip().warnings())
                .contains(
                        "Nuts is to be broken loose on wheels, but the guard is in the way and comes off only when the car"
                                + " is raised.");
    }

    @Test
    void capsWorkedOnWheels_comeBeforeAWheelIsOff() {
        ASheet sheet = ASheet.oneSide();
        sheet.part("wheel");
        sheet.part("cap");
        sheet.joint("nuts", JointKind.NUT, "wheel", "body")
                .count(4)
                .tighten(Height.ON_WHEELS)
                .reachOnWheels();
        sheet.joint("clip", JointKind.CLIP, "cap", "wheel").height(Height.ON_WHEELS);
        Travelled trip = Travelled.of(sheet.assembly(), "wheel");
        assertThat(trip.numbers(Act.HEIGHT).count()).isEqualTo(2);
        assertThat(trip.trip().warnings()).isEmpty();
    }

    @Test
    void raise_saysWhereAndHowTheCarStands() {
        Step raise = Travelled.of(Cars.strut(), "left.strut")
                .all(Act.HEIGHT)
                .findFirst()
                .orElseThrow();
        assertThat(raise.text()).contains("the sill seam");
        assertThat(raise.cautions())
                .anyMatch(line -> line.contains("not on the beam"))
                .anyMatch(line -> line.startsWith("Chock"))
                .anyMatch(line -> line.contains("never under an arm"));
        assertThat(raise.setup()).isEqualTo(Minutes.of("3.0"));
    }

    @Test
    void beamThatIsLetGo_asksForASecondSupport_andGoesDownOnlyWhenTheLastDamperIsLoose() {
        Travelled trip = Travelled.of(Cars.beam(), "spring");
        assertThat(trip.all(Act.HEIGHT).findFirst().orElseThrow().cautions())
                .anyMatch(line -> line.contains("second support"));
        List<Step> dampers = trip.all(Act.UNDO)
                .filter(step -> step.joint().entry().id().equals("damper-bottom"))
                .toList();
        assertThat(trip.at(Act.SUPPORT, "beam")).isLessThan(dampers.get(0).number());
        Step last = dampers.get(dampers.size() - 1);
        assertThat(trip.at(Act.LET_DOWN, "beam")).isEqualTo(last.number() + 1);
        assertThat(trip.count(Act.LET_DOWN, "beam")).isEqualTo(1);
    }

    @Test
    void beforeOneUndo_comeCheckMarkAndAid_inThisOrder() {
        Travelled trip = Travelled.of(Cars.strut(), "left.carrier");
        int undo = trip.at(Act.UNDO, "left.strut-to-carrier");
        assertThat(trip.steps().subList(undo - 4, undo))
                .extracting(Step::act)
                .containsExactly(Act.CHECK, Act.MARK, Act.SUPPORT, Act.UNDO);
        assertThat(trip.steps().get(undo).act()).isEqualTo(Act.LOOK);
        assertThat(trip.steps().get(undo).text()).contains("lowest coil and gaiter");
    }

    @Test
    void secondJointThatLetsTheSamePartGo_needsNoSecondStrap() {
        Travelled trip = Travelled.of(Cars.strut(), "left.carrier");
        assertThat(trip.count(Act.SUPPORT, "left.carrier")).isEqualTo(1);
    }

    @Test
    void caliperOnItsHose_isTiedUp_withWhatIsOnIt() {
        Step aside = Travelled.of(Cars.strut(), "left.disc").first(Act.ASIDE, "left.caliper");
        assertThat(aside.aid()).isEqualTo("strap");
        assertThat(aside.with()).extracting(part -> part.id()).containsExactly("left.pads");
        assertThat(aside.cautions()).anyMatch(line -> line.contains("Never let it hang on the hose"));
    }

    @Test
    void groupThatHangsWithoutAnAidOfTheSheet_getsAStrap() {
        ASheet sheet = ASheet.oneSide();
        sheet.part("caliper");
        sheet.part("hose").tether(TetherKind.HOSE);
        sheet.part("disc");
        sheet.joint("bolts", JointKind.BOLT, "caliper", "body");
        sheet.joint("union", JointKind.UNION, "hose", "caliper");
        sheet.joint("hose-end", JointKind.UNION, "hose", "body");
        sheet.joint("screw", JointKind.SCREW, "disc", "body").behind("caliper");
        Travelled trip = Travelled.of(sheet.assembly(), "disc");
        assertThat(trip.at(Act.ASIDE, "caliper")).isEqualTo(trip.at(Act.UNDO, "bolts") + 1);
        assertThat(trip.at(Act.RELEASE, "caliper")).isGreaterThan(trip.at(Act.RUN_DOWN, "bolts"));
    }

    @Test
    void sheetsOwnAside_isUsedWithItsAidAndMinutes() {
        ASheet sheet = ASheet.oneSide();
        sheet.part("pump").aside("0.8", "locking pliers", "pump-bolt");
        sheet.part("sensor");
        sheet.joint("pump-bolt", JointKind.BOLT, "pump", "body");
        sheet.joint("pump-pipe", JointKind.UNION, "pump", "body").minutes("9", "9");
        sheet.joint("sensor-bolt", JointKind.BOLT, "sensor", "body").behind("pump");
        Travelled trip = Travelled.of(sheet.assembly(), "sensor");
        Step aside = trip.first(Act.ASIDE, "pump");
        assertThat(aside.aid()).isEqualTo("locking pliers");
        assertThat(aside.minutes()).isEqualTo(Minutes.of("0.4"));
        assertThat(trip.at(Act.OFFER_UP, "pump"))
                .isBetween(trip.at(Act.TIGHTEN, "sensor-bolt"), trip.at(Act.START, "pump-bolt"));
        assertThat(trip.at(Act.RELEASE, "pump")).isGreaterThan(trip.at(Act.RUN_DOWN, "pump-bolt"));
        Sound.check(trip, "aside");
    }

    @Test
    void carrierLeftOnItsBallJoint_isStrapped_andTheSheetIsTold() {
        ASheet sheet = ASheet.oneSide();
        sheet.part("strut");
        sheet.part("carrier");
        sheet.part("arm");
        sheet.joint("top", JointKind.NUT, "strut", "body");
        sheet.joint("bottom", JointKind.BOLT_NUT, "strut", "carrier");
        sheet.joint("ball-joint", JointKind.TAPER, "carrier", "arm").pivot();
        sheet.joint("bush", JointKind.BOLT, "arm", "body").pivot();
        Travelled trip = Travelled.of(sheet.assembly(), "strut");
        assertThat(trip.at(Act.SUPPORT, "carrier")).isLessThan(trip.at(Act.UNDO, "bottom"));
        assertThat(trip.first(Act.SUPPORT, "carrier").cautions()).anyMatch(line -> line.contains("names no aid"));
        assertThat(trip.trip().warnings()).anyMatch(line -> line.contains("held by pivots only"));
    }

    @Test
    void linkLeftOnOneEnd_isNotStrapped() {
        ASheet sheet = ASheet.oneSide();
        sheet.part("link");
        sheet.part("strut");
        sheet.joint("link-top", JointKind.NUT, "link", "strut").pivot();
        sheet.joint("link-bottom", JointKind.NUT, "link", "body").pivot();
        sheet.joint("strut-nut", JointKind.NUT, "strut", "body");
        Travelled trip = Travelled.of(sheet.assembly(), "strut");
        assertThat(trip.all(Act.SUPPORT)).isEmpty();
        assertThat(trip.trip().warnings()).isEmpty();
    }

    @Test
    void whatLeavesInOnePiece_isNamedByTheWantedPart() {
        Step off = Travelled.of(Cars.strut(), "left.strut").first(Act.TAKE_OFF, "left.strut");
        assertThat(off.with()).extracting(part -> part.id()).containsExactly("left.spring", "left.top-mount");
        assertThat(off.text()).isEqualTo("Take off the strut, left, in one piece with spring and top mount.");
    }

    @Test
    void springOnTheBench_hasItsCompressorBeforeTheNutIsTouched() {
        Travelled trip = Travelled.of(Cars.strut(), "left.strut");
        assertThat(trip.at(Act.TAKE_OFF, "left.strut")).isLessThan(trip.at(Act.SUPPORT, "left.spring"));
        assertThat(trip.at(Act.SUPPORT, "left.spring")).isLessThan(trip.at(Act.UNDO, "left.rod-nut"));
        assertThat(trip.first(Act.UNDO, "left.rod-nut").cautions())
                .anyMatch(line -> line.startsWith("Spring under load"))
                .anyMatch(line -> line.startsWith("Hold the rod"));
    }

    @Test
    void springWithoutCompressorOrJack_isWarnedOf() {
        ASheet sheet = ASheet.oneSide();
        sheet.part("spring").stores(StoredEnergy.SPRING);
        sheet.joint("seat", JointKind.SEAT, "spring", "body").at(Station.UNDERNEATH);
        assertThat(Travelled.of(sheet.assembly(), "spring").trip().warnings())
                .anyMatch(line -> line.contains("neither a compressor nor a jack"));
    }

    @Test
    void lookAlikes_areSaidAtTheUndo() {
        assertThat(Travelled.of(Cars.strut(), "left.strut")
                        .first(Act.UNDO, "left.top-nuts")
                        .cautions())
                .contains("Leave rod nut, left alone: it looks alike and stays shut.");
    }

    @Test
    void taper_isBrokenWithItsNutOn() {
        assertThat(Travelled.of(Cars.strut(), "left.arm")
                        .first(Act.UNDO, "left.ball-joint")
                        .text())
                .isEqualTo(
                        "Slacken the nut of ball joint, left, break the taper with the nut still on, then take the nut off.");
    }

    @Test
    void hoseThatLosesItsStrapWithOnePart_isSaidToBeCarriedWithTheOther() {
        ASheet sheet = ASheet.oneSide();
        sheet.part("bracket");
        sheet.part("beam");
        sheet.part("hose").tether(TetherKind.HOSE);
        sheet.part("wire").tether(TetherKind.WIRE);
        sheet.part("cable").tether(TetherKind.CABLE);
        sheet.joint("bracket-bolt", JointKind.BOLT, "bracket", "body");
        sheet.joint("beam-bolt", JointKind.BOLT, "beam", "body")
                .after("bracket-bolt")
                .letsGo("beam", "jack");
        sheet.joint("hose-on-bracket", JointKind.CLIP, "hose", "bracket").after("beam-bolt");
        sheet.joint("wire-on-bracket", JointKind.CLIP, "wire", "bracket").after("hose-on-bracket");
        sheet.joint("lid-clip", JointKind.CLIP, "lid", "body").after("wire-on-bracket");
        sheet.joint("hose-on-beam", JointKind.CLIP, "hose", "beam");
        sheet.joint("wire-on-body", JointKind.PLUG, "wire", "body");
        sheet.joint("cable-on-beam", JointKind.CLIP, "cable", "beam");
        sheet.joint("cable-on-body", JointKind.PLUG, "cable", "body");
        sheet.part("lid");
        Travelled trip = Travelled.of(sheet.assembly(), "bracket", "lid");
        int off = trip.at(Act.TAKE_OFF, "bracket");
        assertThat(trip.all(Act.ASIDE).filter(step -> step.number() > off))
                .as(trip.text())
                .anyMatch(step -> step.part().id().equals("beam")
                        && step.with().stream().anyMatch(part -> part.id().equals("hose")));
    }
}

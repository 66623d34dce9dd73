package putback.angles.linkage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import putback.quantity.Angle;
import putback.quantity.Length;

class TravelTest {
    @ParameterizedTest
    @CsvSource({
        "-40,-0.8579,-0.2057,3.3087,16.0605,-1.065,31.564,955.083,479.767",
        "0,-1.9092,0.0000,3.5215,17.1027,-1.091,32.308,960.448,442.812",
        "40,-2.7975,-0.0194,3.7323,17.9953,-1.127,33.394,961.908,404.900",
        "120,-3.9447,-0.5881,4.1432,19.1901,-1.232,36.530,952.267,325.572",
    })
    void aStrut_isWhereOutsideCodePutsIt(
            double travel,
            double camber,
            double toe,
            double caster,
            double sai,
            double scrub,
            double trail,
            double halfTrack,
            double strut) {
        check(at(Corners.strut(), travel, 0), camber, toe, caster, sai, scrub, trail, halfTrack, strut);
    }

    @ParameterizedTest
    @CsvSource({
        "-60,1.0027,1.4698,11.0827,10.5154,42.746,67.484,742.279,540.643",
        "60,0.0073,-1.3297,10.8664,12.5440,40.918,70.490,741.543,421.134",
    })
    void aStrutOffTheSteeringAxis_isWhereAnotherSolverPutsIt(
            double travel,
            double camber,
            double toe,
            double caster,
            double sai,
            double scrub,
            double trail,
            double halfTrack,
            double strut) {
        check(at(Corners.offsetStrut(), travel, 0), camber, toe, caster, sai, scrub, trail, halfTrack, strut);
    }

    @ParameterizedTest
    @CsvSource({
        "-40,-40,-2.3293,14.2324,4.7311,26.6340,-38.686,7.082,959.337",
        "120,40,-0.9219,-11.9418,4.4733,27.0879,-41.574,57.791,933.063",
    })
    void aDoubleWishbone_isWhereOutsideCodePutsIt(
            double travel,
            double rack,
            double camber,
            double toe,
            double caster,
            double sai,
            double scrub,
            double trail,
            double halfTrack) {
        WheelPosition wheel = at(Corners.wishbones(), travel, rack);
        assertThat(wheel.frontViewCamberDeg()).isCloseTo(camber, within(6e-5));
        check(wheel, wheel.camberDeg(), toe, caster, sai, scrub, trail, halfTrack, -1);
    }

    private static void check(
            WheelPosition wheel,
            double camber,
            double toe,
            double caster,
            double sai,
            double scrub,
            double trail,
            double halfTrack,
            double strut) {
        assertThat(wheel.camberDeg()).isCloseTo(camber, within(3e-4));
        assertThat(wheel.toeDeg()).isCloseTo(toe, within(6e-5));
        assertThat(wheel.casterDeg()).isCloseTo(caster, within(6e-5));
        assertThat(wheel.saiDeg()).isCloseTo(sai, within(6e-5));
        assertThat(wheel.includedDeg()).isCloseTo(wheel.camberDeg() + sai, within(6e-5));
        assertThat(wheel.scrubMm()).isCloseTo(scrub, within(6e-4));
        assertThat(wheel.trailMm()).isCloseTo(trail, within(6e-4));
        assertThat(wheel.halfTrackMm()).isCloseTo(halfTrack, within(6e-4));
        assertThat(wheel.strutMm() == null ? -1 : wheel.strutMm()).isCloseTo(strut, within(6e-4));
    }

    @Test
    void theInstantCentre_isWhereTheConstructionPutsIt() {
        WheelPosition.Centre centre = at(Corners.strut(), 0, 0).centre();
        assertThat(centre).isNotNull();
        assertThat(centre.yMm()).isCloseTo(-1416.5, within(1e-3));
        assertThat(centre.zMm()).isCloseTo(200, within(1e-3));
        assertThat(centre.swingArmMm()).isCloseTo(2385.35, within(1e-2));
    }

    @ParameterizedTest
    @CsvSource({"-0.40, 0.35, -0.5835, -1.5365, -1.0243, strut", "-0.50, -0.30, -0.6993, -2.2760, -1.5174, offset"})
    void aWantedChange_isFoundExactly(double camber, double toe, double bolt, double rod, double turns, String which) {
        Corner corner = which.equals("strut") ? Corners.strut() : Corners.offsetStrut();
        Adjustment.Asked asked = Adjustment.of(corner, new Length(0), new Angle(camber), new Angle(toe));
        assertThat(asked).isInstanceOf(Adjustment.Asked.Found.class);
        Adjustment found = ((Adjustment.Asked.Found) asked).adjustment();
        assertThat(found.boltShiftMm()).isCloseTo(bolt, within(6e-5));
        assertThat(found.rodMm()).isCloseTo(rod, within(6e-5));
        assertThat(found.rodTurns()).isCloseTo(turns, within(6e-5));
        assertThat(found.after().camberDeg() - found.before().camberDeg()).isCloseTo(camber, within(1e-9));
        assertThat(found.after().toeDeg() - found.before().toeDeg()).isCloseTo(toe, within(1e-9));
    }

    @Test
    void farOut_itSaysWhereAndWhatLocks() {
        Travel travel = travel(Corners.strut(), -600, 600, 50, 0);
        assertThat(travel.locks()).isNotEmpty();
        assertThat(travel.positions()).isNotEmpty();
        assertThat(travel.locks().get(0).words()).contains("at a travel of ", "locks: the ", "lower arm");
    }

    static WheelPosition at(Corner corner, double travel, double rack) {
        Travel found = travel(corner, travel, travel, 1, rack);
        assertThat(found.locks()).isEmpty();
        return found.positions().get(0);
    }

    static Travel travel(Corner corner, double from, double to, double step, double rack) {
        return Travel.of(
                corner,
                new Length(rack),
                Travel.Span.of(new Length(from), new Length(to), new Length(step))
                        .or(new Travel.Span(0, 1, 1), why -> {
                            throw new IllegalStateException(why);
                        }));
    }
}

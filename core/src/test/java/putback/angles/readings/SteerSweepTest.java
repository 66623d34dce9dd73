package putback.angles.readings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import putback.angles.space.Turn;
import putback.angles.space.Vector;

class SteerSweepTest {
    /** The wheel turned about its steering axis until it has a toe, as a second program would do it: by rotation. */
    private static SteerReading turned(double caster, double sai, SteerReading straight, double by) {
        Vector axis = new Vector(-Math.tan(Math.toRadians(caster)), -Math.tan(Math.toRadians(sai)), 1).unit();
        double camber = Math.toRadians(straight.camberDeg());
        double toe = Math.toRadians(straight.toeDeg());
        Vector spin = new Vector(Math.cos(camber) * Math.sin(toe), Math.cos(camber) * Math.cos(toe), -Math.sin(camber));
        Vector now = Turn.by(axis.times(Math.toRadians(by))).of(spin);
        return new SteerReading(Math.toDegrees(Math.atan2(now.x(), now.y())), Math.toDegrees(Math.asin(-now.z())));
    }

    @Test
    void anyAxisAnyUnequalSweep_comesBackExactly() {
        for (int seed = 0; seed < 500; seed++) {
            Random random = new Random(seed);
            double caster = -3 + 14 * random.nextDouble();
            double sai = 3 + 15 * random.nextDouble();
            SteerReading straight = new SteerReading(2 * random.nextGaussian(), 3 * random.nextGaussian());
            SteerReading left = turned(caster, sai, straight, 8 + 25 * random.nextDouble());
            SteerReading right = turned(caster, sai, straight, -8 - 25 * random.nextDouble());
            SteerSweep sweep = SteerSweep.of(straight, List.of(left, right));
            assertThat(sweep.casterDeg()).as("seed " + seed).isCloseTo(caster, within(1e-9));
            assertThat(sweep.saiDeg()).as("seed " + seed).isCloseTo(sai, within(1e-8));
        }
    }

    @Test
    void moreReadingsThanTwo_areMetTogether() {
        SteerReading straight = new SteerReading(0.1, -0.5);
        SteerSweep sweep = SteerSweep.of(
                straight,
                List.of(turned(4, 11, straight, 10), turned(4, 11, straight, 20), turned(4, 11, straight, -19)));
        assertThat(sweep.casterDeg()).isCloseTo(4, within(1e-9));
        assertThat(sweep.saiDeg()).isCloseTo(11, within(1e-8));
    }

    @Test
    void aSweepOfHalfADegree_orTheSameReadingTwice_givesNoCaster() {
        SteerReading straight = new SteerReading(0, -0.5);
        SteerSweep tiny = SteerSweep.of(straight, List.of(turned(4, 11, straight, 0.5), turned(4, 11, straight, -0.5)));
        assertThat(tiny.knowsCaster()).isFalse();
        assertThat(tiny.doubt()).contains("steer about 20 deg");
        SteerReading same = new SteerReading(20, -1);
        assertThat(SteerSweep.of(straight, List.of(same, same)).knowsCaster()).isFalse();
        assertThat(SteerSweep.of(straight, List.of(straight, straight)).knowsCaster())
                .isFalse();
    }

    @Test
    void theGain_isWhatASmallErrorMakes() {
        SteerReading straight = new SteerReading(0, 0);
        SteerReading left = turned(3, 12, straight, 20);
        SteerReading right = turned(3, 12, straight, -20);
        SteerSweep sweep = SteerSweep.of(straight, List.of(left, right));
        SteerSweep off =
                SteerSweep.of(straight, List.of(new SteerReading(left.toeDeg(), left.camberDeg() + 0.01), right));
        assertThat(Math.abs(off.saiDeg() - sweep.saiDeg()) / 0.01).isLessThan(sweep.saiGain());
        assertThat(sweep.saiGain()).isBetween(15.0, 25.0);
        assertThat(sweep.isRough()).isFalse();
    }
}

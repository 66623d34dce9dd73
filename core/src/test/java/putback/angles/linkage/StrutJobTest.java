package putback.angles.linkage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import putback.quantity.Length;
import putback.quantity.Parsed;

class StrutJobTest {
    private static StrutJob job(Corner corner, double play, double lower) {
        return StrutJob.of(corner, new Length(play), new Length(lower)) instanceof Parsed.Value<StrutJob> job
                ? job.value()
                : new StrutJob(new Length(play), new Length(lower), none(), none(), none());
    }

    private static WheelPosition none() {
        return new WheelPosition(0, 9e9, 0, 0, 0, 0, 0, 0, 0, 0, null, null);
    }

    /** Against an independent solver's figures for the same points, bolt shifted over 60 mm. */
    @Test
    void play_movesCamberAndToe_lessThanTheJointItself() {
        StrutJob one = job(Corners.strut(), 1, 0);
        double before = one.before().camberDeg();
        assertThat(one.outward().camberDeg() - before).isCloseTo(0.6336, within(2e-4));
        assertThat(one.inward().camberDeg() - before).isCloseTo(-0.6339, within(2e-4));
        assertThat(one.outward().toeDeg()).isCloseTo(0.3172, within(2e-4));
        assertThat(one.outward().saiDeg() - one.before().saiDeg()).isCloseTo(0.0130, within(2e-4));
        assertThat(StrutJob.turnOfPlay(13, 12, 60)).isCloseTo(0.9548, within(1e-4));
        StrutJob off = job(Corners.offsetStrut(), 2, 0);
        assertThat(off.outward().camberDeg() - off.before().camberDeg()).isCloseTo(1.7733, within(2e-4));
        assertThat(off.inward().toeDeg() - off.before().toeDeg()).isCloseTo(0.9260, within(2e-4));
    }

    @Test
    void aLowerBody_isAWheelHigherInItsTravel() {
        StrutJob lower = job(Corners.strut(), 0, 20);
        assertThat(lower.outward().camberDeg() - lower.before().camberDeg()).isCloseTo(-0.4661, within(2e-4));
        assertThat(lower.inward()).isEqualTo(lower.outward());
        assertThat(job(Corners.strut(), 0, -30).inward().toeDeg()).isCloseTo(-0.1313, within(2e-4));
    }

    @Test
    void whatCannotBe_isRefused() {
        assertThat(StrutJob.of(Corners.strut(), new Length(-1), new Length(0))).isInstanceOf(Parsed.Refused.class);
        assertThat(StrutJob.of(Corners.strut(), new Length(30), new Length(0))).isInstanceOf(Parsed.Refused.class);
        assertThat(StrutJob.of(Corners.strut(), new Length(0), new Length(1900)))
                .isInstanceOf(Parsed.Refused.class);
    }
}

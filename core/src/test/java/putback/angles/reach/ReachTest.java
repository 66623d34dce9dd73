package putback.angles.reach;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import putback.angles.space.Vector;

class ReachTest {
    private static final Vector BRACKET = new Vector(60, 560, 520);
    private static final Vector FITTING = new Vector(90, 690, 330);
    private static final Vector BALL = new Vector(0, 660, 200);

    private static Reach straightDown(List<Tie> ties, double most) {
        return Reach.along(ties, most, drop -> point -> point.plus(new Vector(0, 0, -drop)));
    }

    @Test
    void straightLines_areAsLongAsTheirEndsAreApart() {
        Tie hose = Tie.hose("hose", BRACKET, FITTING, 310.0);
        assertThat(hose.lengthMm(FITTING)).isCloseTo(232.164, within(5e-4));
        assertThat(hose.lengthMm(new Vector(130, 700, 240))).isCloseTo(320.780, within(5e-4));
        Tie shaft = Tie.shaft("shaft", new Vector(0, 200, 310), new Vector(10, 690, 300), 25.0);
        assertThat(shaft.mostMm()).isCloseTo(490.204 + 25, within(5e-4));
        assertThat(shaft.lengthMm(new Vector(-15, 725, 215))).isCloseTo(533.737, within(5e-4));
    }

    @Test
    void aDrop_endsWhereTheHoseIsStraight_asPythagorasSays() {
        Reach reach = straightDown(List.of(Tie.hose("hose", BRACKET, FITTING, 310.0)), 250);
        double drop = Math.sqrt(310.0 * 310 - 30 * 30 - 130 * 130) - 190;
        assertThat(reach).isInstanceOfSatisfying(Reach.Until.class, until -> {
            assertThat(until.amount()).isCloseTo(drop, within(1e-9));
            assertThat(until.tie()).isEqualTo("hose");
        });
    }

    @Test
    void theFirstTieToTighten_isNamed() {
        Tie hose = Tie.hose("hose", BRACKET, FITTING, 310.0);
        Tie wire = Tie.hose("wire", BRACKET, FITTING, 280.0);
        assertThat(straightDown(List.of(hose, wire), 250))
                .isInstanceOfSatisfying(
                        Reach.Until.class, until -> assertThat(until.tie()).isEqualTo("wire"));
    }

    @Test
    void anUnknownLength_isNotKnown_andAShortOneIsTightAlready() {
        assertThat(straightDown(List.of(Tie.hose("hose", BRACKET, FITTING, null)), 250))
                .isEqualTo(new Reach.NotKnown("hose"));
        assertThat(straightDown(List.of(Tie.hose("hose", BRACKET, FITTING, 200.0)), 250))
                .isEqualTo(new Reach.TightAlready("hose"));
        assertThat(straightDown(List.of(), 250)).isEqualTo(new Reach.Free(250));
    }

    @Test
    void leaningOut_endsWhereTheShaftIsDrawnOut() {
        Tie shaft = Tie.shaft("half-shaft", new Vector(0, 200, 310), new Vector(10, 690, 300), 25.0);
        Reach reach = Reach.leaning(List.of(shaft), BALL, 60);
        assertThat(reach).isInstanceOfSatisfying(Reach.Until.class, until -> {
            double angle = Math.toRadians(until.amount());
            double y = 30 * Math.cos(angle) + 100 * Math.sin(angle) + 660;
            double z = -30 * Math.sin(angle) + 100 * Math.cos(angle) + 200;
            assertThat(Math.hypot(10, Math.hypot(y - 200, z - 310))).isCloseTo(515.204, within(1e-3));
            assertThat(until.amount()).isBetween(5.0, 40.0);
        });
    }
}

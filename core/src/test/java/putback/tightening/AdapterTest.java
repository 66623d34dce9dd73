package putback.tightening;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import putback.quantity.Angle;
import putback.quantity.Length;
import putback.quantity.Parsed;
import putback.quantity.Torque;

class AdapterTest {
    @ParameterizedTest
    @CsvSource({"0, 66.667", "45, 73.879", "60, 80", "90, 100", "135, 154.692", "180, 200", "-45, 73.879", "360, 66.667"
    })
    void settings_followTheAngle(double degrees, double setting) {
        Adapter adapter = adapter(12, 6, degrees);
        assertThat(adapter.setting(new Torque(100)).newtonMetres()).isCloseTo(setting, offset(1e-3));
        assertThat(adapter.atFastener(adapter.setting(new Torque(100))).newtonMetres())
                .isCloseTo(100, offset(1e-9));
    }

    @Test
    void anAdapterThatPointsBackPastTheHand_isRefused() {
        assertThat(Adapter.of(new Length(300), new Length(2000), new Angle(180)))
                .isInstanceOf(Parsed.Refused.class)
                .asString()
                .contains("points back to the hand or past it");
        assertThat(Adapter.of(new Length(300), new Length(300), new Angle(180))).isInstanceOf(Parsed.Refused.class);
        assertThat(Adapter.of(new Length(0), new Length(50), new Angle(0))).isInstanceOf(Parsed.Refused.class);
        assertThat(Adapter.of(new Length(300), new Length(-50), new Angle(0))).isInstanceOf(Parsed.Refused.class);
    }

    @ParameterizedTest
    @CsvSource({
        "98, 5, 107.8, 100",
        "97, 5, 106.7, 95",
        "97.5, 5, 107, 95",
        "98, 5, 99, 95",
        "71.1, 2, 78, 72",
        "0.3, 0.1, 0.33, 0.3"
    })
    void theNearestMark_neverPassesTheLimit(double setting, double step, double limit, double mark) {
        Parsed<Torque> found = Graduation.nearest(new Torque(setting), new Torque(step), new Torque(limit));
        assertThat(((Parsed.Value<Torque>) found).value().newtonMetres()).isCloseTo(mark, offset(1e-9));
    }

    @Test
    void aWrenchTooCoarse_isRefused() {
        assertThat(Graduation.nearest(new Torque(3), new Torque(5), new Torque(3.3)))
                .isInstanceOf(Parsed.Refused.class);
    }

    /** ISO 6789: whatever a wrench within its deviation reads inside the window, the fastener is within its limits. */
    @Test
    void aReadingInTheWindow_isRightAtBothEndsOfTheDeviation() {
        Adapter adapter = adapter(400, 50, 0);
        Torque least = new Torque(90);
        Torque most = new Torque(110);
        ReadingWindow window = ((Parsed.Value<ReadingWindow>) ReadingWindow.of(least, most, adapter, 0.04)).value();
        for (double deviation : new double[] {-0.04, 0, 0.04}) {
            assertThat(adapter.atFastener(window.low()).newtonMetres() / (1 + deviation))
                    .isBetween(90 - 1e-9, 110 + 1e-9);
            assertThat(adapter.atFastener(window.high()).newtonMetres() / (1 + deviation))
                    .isBetween(90 - 1e-9, 110 + 1e-9);
        }
        assertThat(ReadingWindow.of(new Torque(98), new Torque(102), adapter, 0.04))
                .isInstanceOf(Parsed.Refused.class);
    }

    private static Adapter adapter(double wrench, double reach, double degrees) {
        return ((Parsed.Value<Adapter>) Adapter.of(new Length(wrench), new Length(reach), new Angle(degrees))).value();
    }
}

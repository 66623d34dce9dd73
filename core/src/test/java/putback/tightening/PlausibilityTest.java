package putback.tightening;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import putback.quantity.Parsed;
import putback.quantity.StatedTorque;
import putback.quantity.Torque;
import putback.quantity.TorqueUnit;

class PlausibilityTest {
    /** Ordinary figures, common practice, no source: thread, class, least and most N·m. */
    private static final List<String> ORDINARY = List.of(
            "M12x1.5 8.8 100 120",
            "M12x1.25 8.8 100 120",
            "M12x1.5 10.9 100 120",
            "M12x1.25 10.9 100 120",
            "M12x1.75 8.8 80 140",
            "M12x1.25 8.8 80 140",
            "M12x1.5 8.8 80 140",
            "M12x1.75 10.9 80 140",
            "M12x1.25 10.9 80 140",
            "M14x2 8.8 80 140",
            "M14x1.5 8.8 80 140",
            "M14x1.5 10.9 80 140",
            "M14x2 10.9 80 140",
            "M12x1.25 8.8 40 70",
            "M12x1.5 8.8 40 70",
            "M14x1.5 8.8 40 70",
            "M12x1.25 10.9 40 70",
            "M14x1.5 10.9 40 70",
            "M10x1.25 8.8 30 60",
            "M10x1.25 10.9 30 60");

    @Test
    void ordinaryFigures_raiseNoAlarm() {
        List<String> alarms = new ArrayList<>();
        int asked = 0;
        for (String row : ORDINARY) {
            String[] cells = row.split(" ", -1);
            for (int torque = Integer.parseInt(cells[2]); torque <= Integer.parseInt(cells[3]); torque++) {
                asked++;
                if (!judge(cells[0], cells[1], torque + " N·m").isPlausible()) {
                    alarms.add(row + ": " + torque);
                }
            }
        }
        assertThat(asked).isGreaterThan(800);
        assertThat(alarms).as("false alarms of %s", asked).isEmpty();
    }

    @Test
    void figuresMeantInKilogramForceMetres_areMostlyCaught() {
        int caught = 0;
        int asked = 0;
        for (String row : ORDINARY) {
            String[] cells = row.split(" ", -1);
            for (int torque = Integer.parseInt(cells[2]); torque <= Integer.parseInt(cells[3]); torque += 5) {
                asked++;
                String written = Math.round(torque / 9.80665 * 10) / 10.0 + " N·m";
                Plausibility judged = judge(cells[0], cells[1], written);
                caught +=
                        !judged.isPlausible() && judged.otherUnits().contains(TorqueUnit.KILOGRAM_FORCE_METRE) ? 1 : 0;
            }
        }
        assertThat(caught).as("caught of %s", asked).isGreaterThan(asked * 85 / 100);
    }

    @Test
    void m12FineOfClass88_isFullyUsedAt67To112() {
        Plausibility judged = judge("M12x1.25", "8.8", "66 lbf·ft");
        assertThat(judged.low().newtonMetres()).isCloseTo(67, offset(1.0));
        assertThat(judged.high().newtonMetres()).isCloseTo(112, offset(1.0));
    }

    @Test
    void aFigureThatFitsInTwoUnits_cannotBeTold() {
        Plausibility judged = judge("M12x1.25", "8.8", "66 N·m");
        assertThat(judged.verdict()).isEqualTo(Plausibility.Verdict.CANNOT_TELL);
        assertThat(judged.otherUnits()).containsExactly(TorqueUnit.POUND_FOOT);
        assertThat(judged.reason()).contains("cannot tell which unit was meant");
    }

    @Test
    void aFigureFarOutside_isWrong() {
        assertThat(judge("M12x1.25", "8.8", "999999 N·m").isPlausible()).isFalse();
        assertThat(judge("M12x1.25", "8.8", "0.0001 N·m").isPlausible()).isFalse();
        assertThat(judge("M8", "8.8", "98 lbf·ft").isPlausible()).isFalse();
        assertThat(judge("M12x1.25", "10.9", "98 kgf·m").reason()).contains("more than it stands");
    }

    private static Plausibility judge(String thread, String grade, String torque) {
        return Plausibility.of(
                value(ScrewThread.parse(thread)),
                value(PropertyClass.parse(grade)),
                FrictionSpan.DRY,
                value(StatedTorque.parse(torque)));
    }

    private static <T> T value(Parsed<T> parsed) {
        return ((Parsed.Value<T>) parsed).value();
    }

    @Test
    void whatALockingNutTakes_isNoClampLoad() {
        ScrewThread m12 = ((Parsed.Value<ScrewThread>) ScrewThread.parse("M12")).value();
        PropertyClass grade = ((Parsed.Value<PropertyClass>) PropertyClass.parse("8.8")).value();
        StatedTorque stated = ((Parsed.Value<StatedTorque>) StatedTorque.parse("80 N·m")).value();
        assertThat(Plausibility.of(
                                m12,
                                grade,
                                FrictionSpan.DRY,
                                stated,
                                new Plausibility.Circumstance(new Torque(10), false, false))
                        .isPlausible())
                .isTrue();
        Plausibility tight = Plausibility.of(
                m12, grade, FrictionSpan.DRY, stated, new Plausibility.Circumstance(new Torque(70), false, false));
        assertThat(tight.isPlausible()).isFalse();
        assertThat(tight.otherUnits()).containsExactly(TorqueUnit.POUND_FOOT);
    }
}

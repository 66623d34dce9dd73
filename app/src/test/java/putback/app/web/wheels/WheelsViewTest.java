package putback.app.web.wheels;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import putback.app.text.AnglesReport;

class WheelsViewTest {
    private static Map<String, String> car() {
        Map<String, String> typed = new HashMap<>();
        typed.put("front.left.toe", "0.2 deg");
        typed.put("front.right.toe", "0");
        typed.put("rear.left.toe", "0 deg");
        typed.put("rear.right.toe", "0 deg");
        typed.put("front.left.camber", "-0.5");
        typed.put("steering-ratio", "16");
        return typed;
    }

    private static AnglesReport report(Map<String, String> typed) {
        WheelsView view = WheelsView.of(typed);
        assertThat(view.wrong()).isEmpty();
        return Objects.requireNonNull(view.answer()).report();
    }

    @Test
    void rangesAndWhatCanBeTurned_answerWhatToTurn_withoutAFile() {
        Map<String, String> typed = car();
        typed.put("wanted.front.total-toe.from", "0");
        typed.put("wanted.front.total-toe.to", "0.2 deg");
        typed.put("wanted.rear.thrust.from", "-0.1");
        typed.put("wanted.rear.thrust.to", "0.1");
        typed.put("turn.front.left.toe.by", "0.35 deg");
        typed.put("turn.front.left.toe.from", "-6");
        typed.put("turn.front.left.toe.to", "6");
        typed.put("same.front", "yes");
        AnglesReport report = report(typed);
        assertThat(report.turning())
                .hasSize(2)
                .anySatisfy(line -> assertThat(line).startsWith("Front left toe: 0.43 turn"))
                .anySatisfy(line -> assertThat(line).startsWith("Front right toe: 0.14 turn"));
        assertThat(report.straight()).isEqualTo("Then the steering wheel stands straight.");
        assertThat(report.goals())
                .extracting(AnglesReport.Goal::name, AnglesReport.Goal::verdict)
                .contains(org.assertj.core.groups.Tuple.tuple("front total toe", "inside"));
    }

    @Test
    void aRightWheelThatTurnsOtherwise_keepsItsOwn() {
        Map<String, String> typed = car();
        typed.put("wanted.front.total-toe.from", "0.2 deg");
        typed.put("wanted.front.total-toe.to", "0.2 deg");
        typed.put("turn.front.left.toe.by", "0.35 deg");
        typed.put("turn.front.right.toe.by", "0.1 deg");
        typed.put("turn.front.right.toe.per", "mark");
        typed.put("turn.front.right.toe.from", "-3");
        typed.put("turn.front.right.toe.to", "3");
        typed.put("turn.front.right.toe.whole", "yes");
        typed.put("same.front", "yes");
        assertThat(report(typed).turning()).anySatisfy(line -> assertThat(line)
                .startsWith("Front right toe: 1 mark; front right toe in 0.10 deg"));
    }

    @Test
    void aCamberBolt_bringsItsToe() {
        Map<String, String> typed = car();
        typed.put("wanted.front.camber.from", "-0.2");
        typed.put("wanted.front.camber.to", "0");
        typed.put("turn.front.left.camber.by", "0.63");
        typed.put("turn.front.left.camber.toe", "0.31 deg");
        typed.put("turn.front.left.camber.per", "mm");
        assertThat(report(typed).turning()).anySatisfy(line -> assertThat(line)
                .contains("Front left camber: ", " mm;", "front left top out", "toe in"));
    }

    @Test
    void aSweep_givesTheCaster() {
        Map<String, String> typed = car();
        typed.put("front.left.toe", "0.10 deg");
        typed.put("front.left.sweep.1.toe", "-19.9");
        typed.put("front.left.sweep.1.camber", "1.25665");
        typed.put("front.left.sweep.2.toe", "20.1");
        typed.put("front.left.sweep.2.camber", "-0.78427");
        assertThat(report(typed).rows()).anySatisfy(row -> {
            assertThat(row.name()).isEqualTo("front caster");
            assertThat(Objects.requireNonNull(row.left())).isBetween(2.99, 3.01);
        });
    }

    @Test
    void whatIsWrong_isSaidAtItsField_inWordsWithoutTheFilesKeys() {
        Map<String, String> typed = car();
        typed.put("front.right.toe", "3");
        typed.put("rear.left.camber", "green");
        typed.put("wanted.front.total-toe.from", "0.3 deg");
        typed.put("wanted.front.total-toe.to", "0.1 deg");
        typed.put("wanted.rear.thrust.to", "0.1");
        typed.put("turn.rear.left.toe.from", "-3");
        typed.put("turn.rear.left.toe.to", "3");
        typed.put("steering-ratio", "1000");
        WheelsView view = WheelsView.of(typed);
        assertThat(view.answer()).isNull();
        assertThat(view.wrong("front.right.toe")).startsWith("\"3\" has no unit");
        assertThat(view.wrong("rear.left.camber")).contains("green");
        assertThat(view.wrong("wanted.front.total-toe.from")).startsWith("the low end is above the high end");
        assertThat(view.wrong("wanted.rear.thrust.from")).startsWith("a range is its two ends");
        assertThat(view.wrong("turn.rear.left.toe.by")).contains("changes nothing");
        assertThat(view.wrong("steering-ratio")).isNotEmpty();
        assertThat(view.wrong("front.left.toe")).isEmpty();
        assertThat(view.wrong())
                .allSatisfy(one -> assertThat(one.field()).as(one.said()).isNotEmpty())
                .anySatisfy(one -> assertThat(one.at()).isEqualTo("wanted rear thrust"));
    }

    @Test
    void halfASweep_isAskedForTheOtherHalf() {
        Map<String, String> typed = car();
        typed.put("front.left.sweep.1.toe", "-20");
        assertThat(WheelsView.of(typed).wrong("front.left.sweep.1.camber")).isNotEmpty();
    }

    @Test
    void rangesWithoutAReading_askNothingYet_andOddLettersBreakNothing() {
        assertThat(WheelsView.of(Map.of("wanted.front.camber.from", "1")).answer())
                .isNull();
        assertThat(WheelsView.of(Map.of("wanted.front.camber.from", "1")).wrong())
                .isEmpty();
        for (String odd : new String[] {"\"", "\\", "\n: {", "\uD83D\uDE00", "\uD83D", "]]>", "&a", "- x", "\u0000"}) {
            WheelsView view = WheelsView.of(Map.of("front.left.camber", odd + "1"));
            assertThat(view.answer()).as(odd).isNull();
            assertThat(view.wrong()).as(odd).isNotEmpty();
        }
    }
}

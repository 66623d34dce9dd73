package putback.app.web.wheels;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;

class CornerViewTest {
    private static Map<String, String> own(String suspension) {
        Map<String, String> typed = new HashMap<>();
        typed.put("suspension", suspension);
        typed.put("tyre-radius", "313.6");
        for (CornerPoint point : CornerFields.points(suspension)) {
            for (String axis : CornerPoint.AXES) {
                typed.put(
                        CornerFields.field(suspension, point, axis),
                        point.example().get(CornerPoint.AXES.indexOf(axis)));
            }
        }
        return typed;
    }

    @Test
    void untilPointsAreGiven_theCarDrawnIsAnExample_ofEitherSuspension() {
        for (String suspension : new String[] {CornerFields.STRUT, CornerFields.WISHBONE}) {
            CornerView view = CornerView.of(Map.of("suspension", suspension, "travel", "40"));
            assertThat(view.example()).isTrue();
            assertThat(view.missing()).isEmpty();
            assertThat(view.wrong()).isEmpty();
            assertThat(Objects.requireNonNull(view.answer()).locks()).isEmpty();
        }
    }

    @Test
    void onesOwnPoints_areDrawnOnceAllOfThemAreThere() {
        for (String suspension : new String[] {CornerFields.STRUT, CornerFields.WISHBONE}) {
            Map<String, String> typed = own(suspension);
            CornerView whole = CornerView.of(typed);
            assertThat(whole.example()).isFalse();
            assertThat(whole.wrong()).isEmpty();
            assertThat(Objects.requireNonNull(whole.answer()).wide()).contains("travel of 0 mm");
            typed.remove("tyre-radius");
            CornerView part = CornerView.of(typed);
            assertThat(part.example()).isTrue();
            assertThat(part.stillMissing()).isEqualTo("radius of the tyre under load");
        }
    }

    @Test
    void theTravel_isComparedWithHowItStands() {
        CornerView view = CornerView.of(Map.of("travel", "40"));
        assertThat(Objects.requireNonNull(view.answer()).rows()).anySatisfy(row -> {
            assertThat(row.name()).isEqualTo("camber, deg");
            assertThat(row.standing()).isEqualTo("-1.909");
            assertThat(row.there()).isEqualTo("-2.797");
            assertThat(row.change()).isEqualTo("-0.888");
        });
    }

    @Test
    void aRightWheel_isMirrored_soNegativeYGivesTheSameFigures() {
        Map<String, String> typed = own(CornerFields.STRUT);
        Map<String, String> right = new HashMap<>(typed);
        right.put("side", "right");
        right.replaceAll((name, value) ->
                !name.endsWith(".y") ? value : value.startsWith("-") ? value.substring(1) : "-" + value);
        assertThat(Objects.requireNonNull(CornerView.of(right).answer()).rows())
                .isEqualTo(Objects.requireNonNull(CornerView.of(typed).answer()).rows());
    }

    @Test
    void whatIsWrong_isSaidAtItsField() {
        Map<String, String> typed = own(CornerFields.STRUT);
        typed.put("s.ball-joint.z", "low");
        assertThat(CornerView.of(typed).wrong("s.ball-joint.z")).contains("low");
        typed = own(CornerFields.STRUT);
        typed.put("s.strut-top.x", "0");
        typed.put("s.strut-top.y", "900");
        typed.put("s.strut-top.z", "200");
        CornerView doubted = CornerView.of(typed);
        assertThat(doubted.wrong()).isNotEmpty().allSatisfy(one -> assertThat(one.field())
                .isNotEmpty());
    }

    @Test
    void aFile_goesBeforeTheFields() {
        CornerView view = CornerView.of(Map.of("file", "suspension: rocket"));
        assertThat(view.wrong().get(0).at()).startsWith("line 1");
        assertThat(view.example()).isFalse();
    }
}

package putback.angles.adjusting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import putback.angles.readings.CarAngles;
import putback.angles.readings.Figure;
import putback.angles.readings.Measure;
import putback.angles.readings.Place;
import putback.angles.readings.WheelAngle;

class AdjustingTest {
    private static final CarAngles CAR = car(-0.5, 0.3, -0.4, -0.2, 0.4, -0.2);

    private static CarAngles car(
            double leftCamber, double left, double rightCamber, double right, double rearLeft, double rearRight) {
        Map<WheelAngle, Double> degrees = new HashMap<>();
        degrees.put(new WheelAngle(Place.FRONT_LEFT, Measure.CAMBER), leftCamber);
        degrees.put(new WheelAngle(Place.FRONT_RIGHT, Measure.CAMBER), rightCamber);
        degrees.put(toe(Place.FRONT_LEFT), left);
        degrees.put(toe(Place.FRONT_RIGHT), right);
        degrees.put(toe(Place.REAR_LEFT), rearLeft);
        degrees.put(toe(Place.REAR_RIGHT), rearRight);
        return new CarAngles(degrees);
    }

    private static WheelAngle toe(Place place) {
        return new WheelAngle(place, Measure.TOE);
    }

    private static Adjuster rod(String id, Place place, double range, boolean whole) {
        return new Adjuster(id, Map.of(toe(place), 0.35), "turn", -range, range, whole, List.of());
    }

    private static final List<Wanted> WANTED = List.of(
            new Wanted(Figure.totalToe(true), 0, 0.2),
            new Wanted(Figure.totalToe(false), 0, 0.3),
            new Wanted(Figure.thrust(), -0.15, 0.15));

    private static List<Adjuster> rods(double range) {
        return List.of(
                rod("left-rod", Place.FRONT_LEFT, range, false),
                rod("right-rod", Place.FRONT_RIGHT, range, false),
                rod("rear-left", Place.REAR_LEFT, range, false),
                rod("rear-right", Place.REAR_RIGHT, range, false));
    }

    private static double value(Figure figure, Turned turned) {
        Double value = figure.of(turned.after());
        return value == null ? Double.NaN : value;
    }

    @Test
    void withEnoughThread_allOfItComesToItsMiddle_andTheSteeringWheelIsStraight() {
        Turned turned = Adjusting.of(CAR, rods(6), WANTED);
        assertThat(turned.inside()).isTrue();
        assertThat(turned.straight()).isTrue();
        assertThat(value(Figure.totalToe(true), turned)).isCloseTo(0.1, within(1e-5));
        assertThat(value(Figure.totalToe(false), turned)).isCloseTo(0.15, within(1e-5));
        assertThat(value(Figure.thrust(), turned)).isCloseTo(0, within(1e-5));
        assertThat(turned.stops()).isEmpty();
    }

    @Test
    void rearAdjusters_comeFirst_whateverTheFileSays() {
        Turned turned = Adjusting.of(CAR, rods(6), WANTED);
        assertThat(turned.steps().stream().map(step -> step.adjuster().id()))
                .containsExactly("rear-left", "rear-right", "left-rod", "right-rod");
    }

    @Test
    void withoutRearAdjusters_theFrontFollowsTheThrustLine() {
        Turned turned = Adjusting.of(CAR, rods(6).subList(0, 2), WANTED);
        assertThat(turned.straight()).isTrue();
        double split = value(Figure.frontSplit(), turned);
        assertThat(split).isCloseTo(0.3, within(1e-6));
        assertThat(turned.inside()).isFalse();
        assertThat(turned.outcomes().get(2).missDeg()).isCloseTo(0.15, within(1e-9));
    }

    @Test
    void whatCannotComeInside_comesAsNearAsItCan_andTheLimitIsNamed() {
        List<Adjuster> rods =
                List.of(rod("left-rod", Place.FRONT_LEFT, 0.1, false), rod("right-rod", Place.FRONT_RIGHT, 0.1, false));
        Turned turned =
                Adjusting.of(car(0, 0.5, 0, 0.5, 0, 0), rods, List.of(new Wanted(Figure.totalToe(true), 0, 0.2)));
        assertThat(turned.inside()).isFalse();
        assertThat(value(Figure.totalToe(true), turned)).isCloseTo(1 - 0.07, within(1e-6));
        assertThat(turned.stops().stream().map(step -> step.adjuster().id())).contains("left-rod", "right-rod");
        assertThat(turned.straight()).isTrue();
    }

    @Test
    void camberAndToe_areSolvedTogether() {
        Adjuster bolt = new Adjuster(
                "left-bolt",
                Map.of(new WheelAngle(Place.FRONT_LEFT, Measure.CAMBER), 0.63, toe(Place.FRONT_LEFT), 0.31),
                "mm",
                -1,
                1,
                false,
                List.of());
        List<Adjuster> all = List.of(
                bolt, rod("left-rod", Place.FRONT_LEFT, 6, false), rod("right-rod", Place.FRONT_RIGHT, 6, false));
        List<Wanted> wanted = List.of(
                new Wanted(Figure.wheel(Place.FRONT_LEFT, Measure.CAMBER), -1, -0.6),
                new Wanted(Figure.totalToe(true), 0, 0.2));
        Turned turned = Adjusting.of(car(-0.5, 0.1, -0.4, 0.05, 0, 0), all, wanted);
        assertThat(turned.steps().get(0).by()).isCloseTo(-0.3 / 0.63, within(1e-5));
        assertThat(turned.straight()).isTrue();
        assertThat(turned.inside()).isTrue();
        assertThat(value(Figure.totalToe(true), turned)).isCloseTo(0.1, within(1e-5));
    }

    @Test
    void wholeMarks_stayWhole_andAreTheBestOfAll() {
        Adjuster cam = rod("cam", Place.REAR_LEFT, 5, true);
        Turned turned = Adjusting.of(CAR, List.of(cam), WANTED.subList(1, 3));
        assertThat(turned.steps().get(0).by())
                .isEqualTo(Math.rint(turned.steps().get(0).by()));
        assertThat(turned.steps().get(0).by()).isEqualTo(-1);
    }

    @Test
    void whatWasNotRead_isLeftAlone_andInsideIsNotClaimed() {
        CarAngles front = new CarAngles(Map.of(toe(Place.FRONT_LEFT), 0.3, toe(Place.FRONT_RIGHT), 0.1));
        Turned turned = Adjusting.of(front, rods(6).subList(0, 2), WANTED);
        assertThat(turned.inside()).isNull();
        assertThat(turned.aboutTheMiddle()).isTrue();
        assertThat(value(Figure.frontSplit(), turned)).isCloseTo(0, within(1e-6));
    }

    @Test
    void nothingWanted_onlyTheSteeringWheelIsStraightened_withTheLeastTurning() {
        Turned turned = Adjusting.of(car(0, 0.2, 0, 0, 0, 0), rods(6).subList(0, 2), List.of());
        assertThat(turned.straight()).isTrue();
        assertThat(turned.steps().get(0).by()).isCloseTo(-turned.steps().get(1).by(), within(1e-5));
    }

    @Test
    void noAdjusters_changeNothing() {
        Turned turned = Adjusting.of(CAR, List.of(), WANTED);
        assertThat(turned.after()).isEqualTo(CAR);
        assertThat(turned.steps()).isEmpty();
    }
}

package putback.angles.meaning;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import putback.angles.adjusting.Wanted;
import putback.angles.readings.CarAngles;
import putback.angles.readings.Figure;
import putback.angles.readings.Measure;
import putback.angles.readings.Place;
import putback.angles.readings.WheelAngle;

class MeaningTest {
    private static final List<Wanted> WANTED = List.of(
            new Wanted(Figure.wheel(Place.FRONT_LEFT, Measure.SAI), 16.6, 17.6),
            new Wanted(Figure.included(Place.FRONT_LEFT), 14.7, 15.7),
            new Wanted(Figure.wheel(Place.FRONT_LEFT, Measure.CASTER), 3, 4));

    private static CarAngles left(double camber, double sai, double caster) {
        return new CarAngles(Map.of(
                new WheelAngle(Place.FRONT_LEFT, Measure.CAMBER), camber,
                new WheelAngle(Place.FRONT_LEFT, Measure.SAI), sai,
                new WheelAngle(Place.FRONT_LEFT, Measure.CASTER), caster));
    }

    private static String said(CarAngles angles) {
        StringBuilder said = new StringBuilder();
        Bent.of(angles, WANTED).forEach(pointer -> said.append(pointer.text()));
        return said.toString();
    }

    /** Figures of a strut corner in which the top mount stands 10 mm inboard, and of one with the bolt shifted. */
    @Test
    void aTopMountInboard_pointsToAPivot_aShiftedBoltToStrutAndCarrier() {
        assertThat(said(left(-1.909 - 0.763, 17.103 + 0.786, 3.52)))
                .contains("included angle as wanted", "upper pivot inboard", "points to")
                .doesNotContain("stub axle");
        assertThat(said(left(-1.909 - 0.634, 17.103 - 0.013, 3.52))).contains("hub carrier", "bolted joint");
        assertThat(said(left(-3.5, 15, 3.52))).contains("a pivot out of its place and the carrier");
        assertThat(said(left(-1.909, 17.1, 2.4))).contains("caster less than wanted", "common practice, no source");
    }

    @Test
    void allAsWanted_orNothingWanted_pointsNowhere() {
        assertThat(said(left(-1.909, 17.1, 3.5))).isEmpty();
        assertThat(Bent.of(left(-3, 10, 1), List.of())).isEmpty();
    }

    @Test
    void aPull_goesToTheSideWithMoreCamber_andWithLessCaster() {
        Map<WheelAngle, Double> degrees = new HashMap<>(left(0.5, 12, 3).degrees());
        degrees.put(new WheelAngle(Place.FRONT_RIGHT, Measure.CAMBER), -0.3);
        degrees.put(new WheelAngle(Place.FRONT_RIGHT, Measure.CASTER), 2.0);
        CarAngles car = new CarAngles(degrees);
        List<Pointer> pull = Pull.of(car, List.of(new Wanted(Figure.cross(true, Measure.CAMBER), -0.5, 0.5)));
        assertThat(pull.get(0).pointsTo()).isEqualTo("a pull to the left");
        assertThat(pull.get(1).pointsTo()).startsWith("a pull to the right").contains("no range is given");
        assertThat(pull).hasSize(2);
        assertThat(Pull.of(car, List.of(new Wanted(Figure.cross(true, Measure.CAMBER), -1, 1))))
                .hasSize(1);
    }
}

package putback.app.wheels;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import putback.angles.adjusting.Adjuster;
import putback.angles.adjusting.Adjusting;
import putback.angles.linkage.Corner;
import putback.angles.linkage.Layout;
import putback.angles.readings.CarAngles;
import putback.angles.readings.Measure;
import putback.angles.readings.Place;
import putback.angles.readings.WheelAngle;
import putback.angles.space.Vector;

class DrawingsTest {
    private static CarAngles car(double toe) {
        Map<WheelAngle, Double> degrees = new HashMap<>();
        for (Place place : Place.values()) {
            degrees.put(new WheelAngle(place, Measure.CAMBER), -0.5);
            degrees.put(new WheelAngle(place, Measure.TOE), place == Place.FRONT_LEFT ? toe : 0.0);
        }
        return new CarAngles(degrees);
    }

    private static String drawn(double toe, List<Adjuster> adjusters) {
        return CarSvg.draw("A <car> & \"more\"", car(toe), Adjusting.of(car(toe), adjusters, List.of()));
    }

    private static Corner corner() {
        Layout.Arm lower =
                new Layout.Arm(new Vector(250, 400, 200), new Vector(-250, 450, 200), new Vector(0, 900, 200));
        return new Corner(
                false,
                new Layout.Strut(lower, new Vector(-40, 700, 850), new Vector(-14, 830, 427.5)),
                new Vector(50, 200, 250),
                new Vector(150, 800, 275),
                new Vector(-20, 950, 313.426),
                Vector.LEFT,
                313.6,
                null,
                null);
    }

    private static void isXml(String svg) throws Exception {
        assertThat(DocumentBuilderFactory.newInstance()
                        .newDocumentBuilder()
                        .parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)))
                        .getDocumentElement()
                        .getTagName())
                .isEqualTo("svg");
    }

    @Test
    void theCar_saysHowMuchLargerItIsDrawn_andNumbersItsWheels() throws Exception {
        String svg = drawn(0.2, List.of());
        isXml(svg);
        assertThat(svg).contains("drawn 50 times", "1  front left", "4  rear right", "toe 0.20 deg (0°12')");
        assertThat(drawn(3, List.of())).contains("drawn 2 times");
        assertThat(svg).doesNotContain(">then ");
    }

    @Test
    void aWheelToedIn_turnsItsFrontToTheMiddle() {
        assertThat(drawn(0.2, List.of())).contains("rotate(10 250 200)");
    }

    @Test
    void whatIsTurned_isDrawnAsItWillStand() {
        Adjuster rod = new Adjuster(
                "left-rod",
                Map.of(new WheelAngle(Place.FRONT_LEFT, Measure.TOE), 0.35),
                "turn",
                -6,
                6,
                false,
                List.of());
        assertThat(drawn(0.2, List.of(rod))).contains("ochre-dash", "then 0.00 deg");
    }

    @Test
    void theCorner_hasThreeViews_andMovesWithItsTravel() throws Exception {
        String svg = CornerSvg.draw(corner());
        isXml(svg);
        assertThat(svg).contains("from the front", "from its side", "from above");
        assertThat(svg).doesNotContain("NaN").isEqualTo(CornerSvg.draw(corner(), 0, DrawnFor.FILE));
        assertThat(CornerSvg.draw(corner(), 40, DrawnFor.FILE))
                .isNotEqualTo(svg)
                .contains("travel of 40 mm");
        assertThat(CornerSvg.draw(corner(), 1900, DrawnFor.FILE)).contains("travel of 0 mm");
    }
}

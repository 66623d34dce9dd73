package putback.app.wheels;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import putback.angles.adjusting.Turned;
import putback.angles.readings.CarAngles;
import putback.angles.readings.Figure;
import putback.angles.readings.Measure;
import putback.angles.readings.Place;
import putback.angles.readings.WheelAngle;
import putback.app.text.AngleFigures;

/**
 * The car from above, front at the top, with toe and thrust line, and each wheel from behind with its camber. What is off
 * is drawn larger by a factor that is stated. As read in ink, as it will stand in ochre.
 */
public final class CarSvg {
    private static final double DRAWN_DEG = 14;
    private static final double DIFFERENT_DEG = 0.005;
    private static final int[] FACTORS = {1, 2, 5, 10, 20, 50};
    private static final int LETTERS = 54;
    private static final int FOOT_LETTERS = 62;
    private static final String SIGNS = "Toe in, top out, axis top rearward and inboard are positive.";
    private static final int TITLE_LETTERS = 34;

    private final DrawnFor looked;
    private final Drawing drawing;
    private final CarAngles before;
    private final CarAngles after;
    private final int toeFactor;
    private final int camberFactor;
    private final CarLayout at;
    private final List<String> foot;

    private CarSvg(String title, CarAngles before, Turned turned, DrawnFor looked) {
        this.before = before;
        this.looked = looked;
        after = turned.after();
        toeFactor = factor(Measure.TOE);
        camberFactor = factor(Measure.CAMBER);
        foot = foot();
        String name = title.isEmpty() ? "Wheel angles" : title;
        List<String> titles = looked.narrow() ? Drawing.lines(name, TITLE_LETTERS) : List.of(name);
        List<String> head = head();
        at = looked.narrow()
                ? CarLayout.narrow(
                        16 + 20.0 * titles.size() + 17.0 * head.size(),
                        Math.max(tall(Place.FRONT_LEFT), tall(Place.FRONT_RIGHT)),
                        Math.max(tall(Place.REAR_LEFT), tall(Place.REAR_RIGHT)),
                        18.0 * foot.size())
                : CarLayout.wide();
        drawing = new Drawing(at.width(), at.height(), name + ", the car from above", looked);
        double y = looked.narrow() ? 28 : 36;
        for (String line : titles) {
            drawing.text("title", at.edge(), y, line);
            y += 20;
        }
        for (String line : head) {
            drawing.text("quiet", at.edge(), y, line);
            y += 17;
        }
    }

    private List<String> head() {
        String factors = "From above, front at the top. Toe and thrust drawn " + toeFactor
                + " times, camber (from behind) " + camberFactor + " times as large.";
        List<String> head = new ArrayList<>(looked.narrow() ? Drawing.lines(factors, LETTERS) : List.of(factors));
        if (!after.equals(before)) {
            head.add("As read in ink; as it will stand in ochre dashes.");
        }
        return head;
    }

    /** SVG, a document of its own. */
    public static String draw(String title, CarAngles before, Turned turned) {
        return draw(title, before, turned, DrawnFor.FILE);
    }

    /** The same for a page, or a telephone. */
    public static String draw(String title, CarAngles before, Turned turned, DrawnFor looked) {
        CarSvg car = new CarSvg(title, before, turned, looked);
        car.body();
        car.thrust();
        for (Place place : Place.values()) {
            car.wheel(place);
        }
        car.feet();
        return car.drawing.done();
    }

    /** The largest round factor with which nothing is turned too far to look like a wheel. */
    private int factor(Measure measure) {
        double most = 0;
        for (CarAngles angles : new CarAngles[] {before, after}) {
            for (Map.Entry<WheelAngle, Double> angle : angles.degrees().entrySet()) {
                most = angle.getKey().measure() == measure ? Math.max(most, Math.abs(angle.getValue())) : most;
            }
        }
        int factor = 1;
        for (int larger : FACTORS) {
            factor = most * larger <= DRAWN_DEG ? larger : factor;
        }
        return factor;
    }

    private void body() {
        double left = at.middle() - at.half();
        double right = at.middle() + at.half();
        double nose = at.front() - at.over();
        double tail = at.rear() + at.over() + 8;
        drawing.line("datum", at.middle(), nose - 13, at.middle(), tail + 4);
        for (double axle : new double[] {at.front(), at.rear()}) {
            drawing.line("line", at.middle() - at.halfTrack(), axle, at.middle() + at.halfTrack(), axle);
        }
        drawing.path(
                "rule",
                true,
                left,
                nose + 30,
                left + 26,
                nose,
                right - 26,
                nose,
                right,
                nose + 30,
                right,
                tail - 18,
                right - 16,
                tail,
                left + 16,
                tail,
                left,
                tail - 18);
    }

    private void thrust() {
        Double thrust = Figure.thrust().of(before);
        Double then = Figure.thrust().of(after);
        boolean turned = thrust != null && then != null && Math.abs(then - thrust) > DIFFERENT_DEG;
        if (thrust != null) {
            ray("line", thrust);
        }
        if (turned && then != null) {
            ray("ochre-dash", then);
        }
        if (thrust != null && !looked.narrow()) {
            drawing.text("mid", at.middle(), at.rear() + 122, "thrust " + AngleFigures.both(thrust) + way(thrust));
            if (turned && then != null) {
                drawing.text("mid then", at.middle(), at.rear() + 140, "then " + AngleFigures.both(then) + way(then));
            }
        }
    }

    private static String way(double thrust) {
        return Math.abs(thrust) < DIFFERENT_DEG ? "" : thrust > 0 ? ", to the right" : ", to the left";
    }

    private void ray(String kind, double degrees) {
        double angle = Math.toRadians(degrees * toeFactor);
        double length = at.ray();
        double x = at.middle() + length * Math.sin(angle);
        double y = at.rear() - length * Math.cos(angle);
        drawing.line(kind, at.middle(), at.rear(), x, y);
        double[] tip = {x, y};
        for (double side : new double[] {-1, 1}) {
            double back = angle + Math.PI + side * 0.32;
            drawing.line(kind, tip[0], tip[1], x + 13 * Math.sin(back), y - 13 * Math.cos(back));
        }
    }

    private void wheel(Place place) {
        int side = place.isLeft() ? -1 : 1;
        double x = at.middle() + side * at.halfTrack();
        double y = place.isFront() ? at.front() : at.rear();
        Double toe = before.of(place, Measure.TOE);
        Double then = after.of(place, Measure.TOE);
        drawing.turnedBox("part", x, y, 36, 116, toe == null ? 0 : -side * toe * toeFactor);
        if (toe != null && then != null && Math.abs(then - toe) > DIFFERENT_DEG) {
            drawing.turnedBox("ochre-dash", x, y, 36, 116, -side * then * toeFactor);
        }
        drawing.text("mid name", x, y + 5, String.valueOf(place.ordinal() + 1));
        leaning(place, at.middle() + side * (at.halfTrack() + at.beside()), y + 40, side);
        label(place, side);
    }

    /** The wheel from behind, on the ground. */
    private void leaning(Place place, double x, double ground, int side) {
        Double camber = before.of(place, Measure.CAMBER);
        if (camber == null) {
            return;
        }
        drawing.line("rule", x - 26, ground, x + 26, ground);
        drawing.line("datum", x, ground, x, ground - 76);
        upright("part", x, ground, side * camber * camberFactor);
        Double then = after.of(place, Measure.CAMBER);
        if (then != null && Math.abs(then - camber) > DIFFERENT_DEG) {
            upright("ochre-dash", x, ground, side * then * camberFactor);
        }
    }

    /** Turned about where it stands. */
    private void upright(String kind, double x, double ground, double degrees) {
        double angle = Math.toRadians(degrees);
        drawing.turnedBox(kind, x + 32 * Math.sin(angle), ground - 32 * Math.cos(angle), 18, 64, degrees);
    }

    private void label(Place place, int side) {
        double x = side < 0 ? at.edge() : at.width() - at.edge();
        double top = place.isFront() ? at.frontLabel() : at.rearLabel();
        String to = side < 0 ? "" : " end";
        drawing.text("name" + to, x, top, place.ordinal() + 1 + "  " + place.said());
        double y = top + 18;
        for (Measure measure : Measure.values()) {
            y = row(place, measure, x, y, to);
        }
    }

    private double row(Place place, Measure measure, double x, double y, String to) {
        Double value = before.of(place, measure);
        if (value == null) {
            return y;
        }
        String name = measure == Measure.SAI ? "SAI" : measure.word();
        drawing.text(to.strip(), x, y, name + " " + AngleFigures.both(value));
        @Nullable Double then = after.of(place, measure);
        if (then != null && Math.abs(then - value) > DIFFERENT_DEG) {
            drawing.text("then" + to, x, y + 16, "then " + AngleFigures.both(then));
            return y + 36;
        }
        return y + 20;
    }

    /** What the labels of a wheel take, as {@link #label} writes them. */
    private double tall(Place place) {
        double tall = 18;
        for (Measure measure : Measure.values()) {
            Double value = before.of(place, measure);
            Double then = after.of(place, measure);
            boolean changes = value != null && then != null && Math.abs(then - value) > DIFFERENT_DEG;
            tall += value == null ? 0 : changes ? 36 : 20;
        }
        return tall;
    }

    private List<String> foot() {
        List<String> foot = new ArrayList<>();
        for (boolean front : new boolean[] {true, false}) {
            said(foot, (front ? "front" : "rear") + " total toe ", Figure.totalToe(front), false);
        }
        if (looked.narrow()) {
            said(foot, "thrust ", Figure.thrust(), true);
        }
        List<String> lines = new ArrayList<>();
        if (looked.narrow()) {
            foot.forEach(line -> lines.addAll(Drawing.lines(line, FOOT_LETTERS)));
            lines.add(SIGNS);
        } else {
            lines.add(String.join(" · ", foot));
            lines.add(SIGNS);
        }
        return lines;
    }

    private void said(List<String> foot, String name, Figure figure, boolean points) {
        Double value = figure.of(before);
        Double then = figure.of(after);
        if (value != null && then != null) {
            boolean changes = Math.abs(then - value) > DIFFERENT_DEG;
            foot.add(name
                    + AngleFigures.both(value)
                    + (points ? way(value) : "")
                    + (changes ? ", then " + AngleFigures.both(then) + (points ? way(then) : "") : ""));
        }
    }

    private void feet() {
        double y = at.height() - 18 - 20.0 * (foot.size() - 1);
        if (looked.narrow()) {
            y = at.height() - 10 - 18.0 * (foot.size() - 1);
        }
        for (String line : foot) {
            drawing.text(line.equals(SIGNS) ? "mid quiet" : "mid", at.middle(), y, line);
            y += looked.narrow() ? 18 : 20;
        }
    }
}

package putback.app.wheels;

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
    private static final double WIDTH = 760;
    private static final double HEIGHT = 800;
    private static final double MIDDLE = WIDTH / 2;
    private static final double HALF_TRACK = 130;
    private static final double FRONT = 200;
    private static final double REAR = 590;
    private static final double DRAWN_DEG = 14;
    private static final double DIFFERENT_DEG = 0.005;
    private static final int[] FACTORS = {1, 2, 5, 10, 20, 50};

    private final Drawing drawing;
    private final CarAngles before;
    private final CarAngles after;
    private final int toeFactor;
    private final int camberFactor;

    private CarSvg(String title, CarAngles before, Turned turned) {
        this.before = before;
        after = turned.after();
        toeFactor = factor(Measure.TOE);
        camberFactor = factor(Measure.CAMBER);
        drawing = new Drawing(WIDTH, HEIGHT, (title.isEmpty() ? "Wheel angles" : title) + ", the car from above");
        drawing.text("title", 24, 36, title.isEmpty() ? "Wheel angles" : title);
        drawing.text(
                "quiet",
                24,
                56,
                "From above, front at the top. Toe and thrust drawn " + toeFactor + " times, camber (from behind) "
                        + camberFactor + " times as large.");
        if (!after.equals(before)) {
            drawing.text("quiet", 24, 73, "As read in ink; as it will stand in ochre.");
        }
    }

    /** SVG, a document of its own. */
    public static String draw(String title, CarAngles before, Turned turned) {
        CarSvg car = new CarSvg(title, before, turned);
        car.body();
        car.thrust();
        for (Place place : Place.values()) {
            car.wheel(place);
        }
        car.foot();
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
        drawing.line("datum", MIDDLE, 95, MIDDLE, REAR + 104);
        drawing.line("line", MIDDLE - HALF_TRACK, FRONT, MIDDLE + HALF_TRACK, FRONT);
        drawing.line("line", MIDDLE - HALF_TRACK, REAR, MIDDLE + HALF_TRACK, REAR);
        double in = 78;
        drawing.path(
                "rule",
                true,
                MIDDLE - in,
                FRONT - 62,
                MIDDLE - in + 26,
                FRONT - 92,
                MIDDLE + in - 26,
                FRONT - 92,
                MIDDLE + in,
                FRONT - 62,
                MIDDLE + in,
                REAR + 82,
                MIDDLE + in - 16,
                REAR + 100,
                MIDDLE - in + 16,
                REAR + 100,
                MIDDLE - in,
                REAR + 82);
    }

    private void thrust() {
        Double thrust = Figure.thrust().of(before);
        Double then = Figure.thrust().of(after);
        if (thrust != null) {
            ray("line", thrust);
            drawing.text("mid", MIDDLE, REAR + 122, "thrust " + AngleFigures.both(thrust) + way(thrust));
        }
        if (thrust != null && then != null && Math.abs(then - thrust) > DIFFERENT_DEG) {
            ray("ochre-dash", then);
            drawing.text("mid then", MIDDLE, REAR + 140, "then " + AngleFigures.both(then) + way(then));
        }
    }

    private static String way(double thrust) {
        return Math.abs(thrust) < DIFFERENT_DEG ? "" : thrust > 0 ? ", to the right" : ", to the left";
    }

    private void ray(String kind, double degrees) {
        double angle = Math.toRadians(degrees * toeFactor);
        double length = 330;
        double x = MIDDLE + length * Math.sin(angle);
        double y = REAR - length * Math.cos(angle);
        drawing.line(kind, MIDDLE, REAR, x, y);
        double[] tip = {x, y};
        for (double side : new double[] {-1, 1}) {
            double back = angle + Math.PI + side * 0.32;
            drawing.line(kind, tip[0], tip[1], x + 13 * Math.sin(back), y - 13 * Math.cos(back));
        }
    }

    private void wheel(Place place) {
        int side = place.isLeft() ? -1 : 1;
        double x = MIDDLE + side * HALF_TRACK;
        double y = place.isFront() ? FRONT : REAR;
        Double toe = before.of(place, Measure.TOE);
        Double then = after.of(place, Measure.TOE);
        drawing.turnedBox("part", x, y, 36, 116, toe == null ? 0 : -side * toe * toeFactor);
        if (toe != null && then != null && Math.abs(then - toe) > DIFFERENT_DEG) {
            drawing.turnedBox("ochre-dash", x, y, 36, 116, -side * then * toeFactor);
        }
        drawing.text("mid name", x, y + 5, String.valueOf(place.ordinal() + 1));
        leaning(place, MIDDLE + side * (HALF_TRACK + 62), y + 40, side);
        label(place, side, y - 68);
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

    private void label(Place place, int side, double top) {
        double x = side < 0 ? 24 : WIDTH - 24;
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

    private void foot() {
        StringBuilder foot = new StringBuilder();
        for (boolean front : new boolean[] {true, false}) {
            Double toe = Figure.totalToe(front).of(before);
            Double then = Figure.totalToe(front).of(after);
            if (toe != null && then != null) {
                foot.append(foot.isEmpty() ? "" : " · ")
                        .append(front ? "front" : "rear")
                        .append(" total toe ");
                foot.append(AngleFigures.both(toe));
                foot.append(Math.abs(then - toe) > DIFFERENT_DEG ? ", then " + AngleFigures.both(then) : "");
            }
        }
        drawing.text("mid", MIDDLE, HEIGHT - 38, foot.toString());
        drawing.text("mid quiet", MIDDLE, HEIGHT - 18, "Toe in, top out, axis top rearward and inboard are positive.");
    }
}

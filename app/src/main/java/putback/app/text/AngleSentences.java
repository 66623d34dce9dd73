package putback.app.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import putback.angles.adjusting.Adjuster;
import putback.angles.adjusting.Turned;
import putback.angles.readings.CarAngles;
import putback.angles.readings.CarReading;
import putback.angles.readings.Figure;
import putback.angles.readings.Measure;
import putback.angles.readings.Place;
import putback.angles.readings.SetBack;
import putback.angles.readings.ToeMillimetres;
import putback.angles.readings.Uncertainty;
import putback.angles.readings.WheelAngle;

/** What follows from wheel angles, and what to turn, a sentence each. */
record AngleSentences(CarReading reading) {
    private static final double NOTHING = 0.005;

    /** Thrust angle, set-back and the steering wheel, as far as they are known. */
    List<String> facts() {
        List<String> facts = new ArrayList<>();
        Double thrust = Figure.thrust().of(reading.angles());
        if (thrust != null) {
            facts.add("Thrust angle " + AngleFigures.both(thrust) + pointing(thrust) + ".");
        }
        SetBack setBack = reading.setBack();
        if (setBack != null) {
            double back = setBack.millimetres();
            String which = back > 0 ? "right" : "left";
            facts.add("Set-back " + AngleFigures.both(Math.abs(setBack.degrees()))
                    + (back == 0
                            ? "."
                            : ": the " + which + " front wheel stands back by " + AngleFigures.plain(Math.abs(back), 1)
                                    + " mm."));
        }
        String steering = steering("The ", reading.angles());
        if (!steering.isEmpty()) {
            facts.add(steering);
        }
        return facts;
    }

    private static String pointing(double thrust) {
        return Math.abs(thrust) < NOTHING ? "" : thrust > 0 ? ", to the right" : ", to the left";
    }

    /** How the steering wheel stands, or the road wheels where the ratio is not given; empty where nobody knows. */
    String steering(String start, CarAngles angles) {
        Double off = Figure.steering().of(angles);
        Double ratio = reading.steeringRatio();
        if (off == null) {
            return "";
        }
        double shown = ratio == null ? off : ratio * off;
        String what = start + (ratio == null ? "road wheels stand " : "steering wheel stands ");
        return Math.abs(shown) < NOTHING
                ? what + "straight."
                : what + AngleFigures.both(Math.abs(shown)) + " to the " + (shown > 0 ? "left" : "right")
                        + " on a straight road.";
    }

    /** How far the gauge alone may put each figure off. */
    String gauge() {
        Uncertainty uncertainty = Uncertainty.of(reading);
        if (uncertainty == null) {
            return "";
        }
        List<String> parts = new ArrayList<>();
        for (boolean front : new boolean[] {true, false}) {
            for (Figure figure : Figure.ofAxle(front)) {
                Double deviation = uncertainty.of(figure);
                if (deviation != null) {
                    parts.add(figure.said() + " " + AngleFigures.plain(deviation, 2));
                }
            }
        }
        return "The gauge alone may be off by (standard deviation, deg): " + String.join(", ", parts) + ".";
    }

    /** The total toes in mm, where they are read so. */
    List<String> totals(CarAngles angles) {
        List<String> totals = new ArrayList<>();
        for (boolean front : new boolean[] {true, false}) {
            Double left = angles.of(front ? Place.FRONT_LEFT : Place.REAR_LEFT, Measure.TOE);
            Double right = angles.of(front ? Place.FRONT_RIGHT : Place.REAR_RIGHT, Measure.TOE);
            @Nullable Double diameter = reading.toeReadAtMm();
            if (left != null && right != null && diameter != null) {
                totals.add((front ? "front total toe is " : "rear total toe is ")
                        + AngleFigures.plain(ToeMillimetres.total(left, right, diameter), 2) + " mm at "
                        + AngleFigures.plain(diameter, 1) + " mm");
            }
        }
        return totals;
    }

    /** What to turn, by how much, which way, and what that does; nothing of what stays as it is. */
    static List<String> turning(Turned turned) {
        List<String> turning = new ArrayList<>();
        for (Turned.Step step : turned.steps()) {
            if (Math.abs(step.by()) >= NOTHING) {
                turning.add(instruction(step));
            }
        }
        return turning;
    }

    private static String instruction(Turned.Step step) {
        Adjuster adjuster = step.adjuster();
        double size = Math.abs(step.by());
        boolean turns = adjuster.per().equals("turn");
        String amount = adjuster.whole() ? AngleFigures.plain(size, 0) : AngleFigures.plain(size, 2);
        String way = adjuster.ways().isEmpty() ? "" : " " + adjuster.ways().get(step.by() > 0 ? 1 : 0);
        return AngleNotes.capital(adjuster.id().replace('-', ' ')) + ": " + amount + " " + adjuster.per()
                + (adjuster.whole() && size != 1 ? "s" : "")
                + (turns && !adjuster.whole() ? AngleFigures.fraction(size) : "") + way + effects(step);
    }

    private static String effects(Turned.Step step) {
        StringBuilder effects = new StringBuilder();
        for (Map.Entry<WheelAngle, Double> effect : step.adjuster().effects().entrySet()) {
            double change = step.by() * effect.getValue();
            effects.append(effects.isEmpty() ? "; " : ", ")
                    .append(effect.getKey().place().said())
                    .append(' ');
            effects.append(direction(effect.getKey().measure(), change)).append(' ');
            effects.append(AngleFigures.both(Math.abs(change)));
        }
        return effects.toString();
    }

    private static String direction(Measure measure, double change) {
        return switch (measure) {
            case TOE -> change > 0 ? "toe in" : "toe out";
            case CAMBER -> change > 0 ? "top out" : "top in";
            case CASTER -> change > 0 ? "caster more" : "caster less";
            case SAI -> change > 0 ? "SAI more" : "SAI less";
        };
    }
}

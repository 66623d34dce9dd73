package putback.app.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import putback.angles.adjusting.Adjuster;
import putback.angles.adjusting.AngleJob;
import putback.angles.adjusting.Outcome;
import putback.angles.adjusting.Turned;
import putback.angles.meaning.Pointer;
import putback.angles.readings.CarAngles;
import putback.angles.readings.CarReading;
import putback.angles.readings.Figure;
import putback.angles.readings.Measure;
import putback.angles.readings.Place;
import putback.angles.readings.SetBack;
import putback.angles.readings.ToeMillimetres;
import putback.angles.readings.Uncertainty;
import putback.angles.readings.WheelAngle;

/** Wheel angles and what to turn, for a person. */
public final class AnglesText {
    private static final double NOTHING = 0.005;

    private final StringBuilder text = new StringBuilder(2000);
    private final CarReading reading;

    private AnglesText(CarReading reading) {
        this.reading = reading;
    }

    /** A table, what to turn, what comes of it, what has to be said. */
    public static String of(AngleJob job, Turned turned) {
        AnglesText text = new AnglesText(job.reading());
        text.table(job.title(), job.reading().angles());
        text.turning(job, turned);
        List<String> notes = AngleNotes.of(job, turned);
        text.paragraph(notes);
        text.pointers(AngleNotes.pointers(job));
        return text.text.toString();
    }

    /** Never a verdict: what a sign may come from. */
    private void pointers(List<Pointer> pointers) {
        if (!pointers.isEmpty()) {
            text.append("\nAs read, before anything is turned:\n");
        }
        for (Pointer pointer : pointers) {
            RowText.wrapped(text, "- ", pointer.text());
        }
    }

    private void paragraph(List<String> lines) {
        if (!lines.isEmpty()) {
            text.append('\n');
        }
        for (String line : lines) {
            RowText.wrapped(text, "", line);
        }
    }

    private void table(String title, CarAngles angles) {
        text.append(title.isEmpty() ? "Wheel angles" : title)
                .append(", degrees (degrees and minutes).\nTop out, toe in, top rearward positive.\n\n");
        text.append("                      left             right\n");
        for (boolean front : new boolean[] {true, false}) {
            for (Measure measure : Measure.values()) {
                row(front, measure, angles);
            }
            included(front, angles);
        }
        thrust(angles);
    }

    private void row(boolean front, Measure measure, CarAngles angles) {
        Double left = angles.of(front ? Place.FRONT_LEFT : Place.REAR_LEFT, measure);
        Double right = angles.of(front ? Place.FRONT_RIGHT : Place.REAR_RIGHT, measure);
        if (left == null && right == null) {
            return;
        }
        name((front ? "front " : "rear ") + (measure == Measure.SAI ? "SAI" : measure.word()));
        cell(left);
        cell(right);
        boolean toe = measure == Measure.TOE;
        Figure figure = toe ? Figure.totalToe(front) : Figure.cross(front, measure);
        Double both = figure.of(angles);
        if (both != null) {
            text.append(toe ? "  total " : "  cross ").append(AngleFigures.column(both));
        }
        Double diameter = reading.toeReadAtMm();
        if (toe && left != null && right != null && diameter != null) {
            text.append("\n").append(" ".repeat(51)).append("= ");
            text.append(AngleFigures.plain(ToeMillimetres.total(left, right, diameter), 2));
            text.append(" mm at ").append(AngleFigures.plain(diameter, 1)).append(" mm");
        }
        text.append('\n');
    }

    /** How far the gauge alone may put each figure off. */
    private void sure() {
        Uncertainty uncertainty = Uncertainty.of(reading);
        if (uncertainty == null) {
            return;
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
        text.append('\n');
        RowText.wrapped(
                text, "", "The gauge alone may be off by (standard deviation, deg): " + String.join(", ", parts) + ".");
    }

    private void included(boolean front, CarAngles angles) {
        Double left =
                Figure.included(front ? Place.FRONT_LEFT : Place.REAR_LEFT).of(angles);
        Double right =
                Figure.included(front ? Place.FRONT_RIGHT : Place.REAR_RIGHT).of(angles);
        if (left != null || right != null) {
            name("included");
            cell(left);
            cell(right);
            text.append('\n');
        }
    }

    private void name(String name) {
        text.append(name).append(" ".repeat(Math.max(1, 14 - name.length())));
    }

    private void cell(@Nullable Double degrees) {
        text.append("  ").append(degrees == null ? "        not read" : AngleFigures.column(degrees));
    }

    private void thrust(CarAngles angles) {
        Double thrust = Figure.thrust().of(angles);
        if (thrust != null) {
            text.append("\nThrust angle ").append(AngleFigures.both(thrust)).append(pointing(thrust));
            text.append(".\n");
        }
        SetBack setBack = reading.setBack();
        if (setBack != null) {
            double back = setBack.millimetres();
            text.append("Set-back ").append(AngleFigures.both(Math.abs(setBack.degrees())));
            text.append(
                    back == 0
                            ? ""
                            : ": the " + (back > 0 ? "right" : "left") + " front wheel stands back by "
                                    + AngleFigures.plain(Math.abs(back), 1) + " mm");
            text.append(".\n");
        }
        steering("The steering wheel stands ", angles);
        sure();
    }

    private static String pointing(double thrust) {
        return Math.abs(thrust) < NOTHING ? "" : thrust > 0 ? ", to the right" : ", to the left";
    }

    private void steering(String start, CarAngles angles) {
        Double off = Figure.steering().of(angles);
        Double ratio = reading.steeringRatio();
        if (off == null) {
            return;
        }
        double shown = ratio == null ? off : ratio * off;
        text.append(ratio == null ? start.replace("The steering wheel stands", "The road wheels stand") : start);
        text.append(
                Math.abs(shown) < NOTHING
                        ? "straight.\n"
                        : AngleFigures.both(Math.abs(shown)) + " to the " + (shown > 0 ? "left" : "right")
                                + " on a straight road.\n");
    }

    private void turning(AngleJob job, Turned turned) {
        if (job.adjusters().isEmpty()) {
            wanted(turned, false);
            return;
        }
        text.append("\nWhat to turn, in this order:\n");
        boolean any = false;
        for (Turned.Step step : turned.steps()) {
            if (Math.abs(step.by()) >= NOTHING) {
                any = true;
                RowText.wrapped(text, "  ", instruction(step));
            }
        }
        if (!any) {
            text.append("  nothing: leave all of it as it is\n");
        }
        if (!turned.allTried()) {
            RowText.wrapped(
                    text, "  ", "Not every way to round to whole marks was tried: maybe there is a better one.");
        }
        text.append('\n');
        steering("Then the steering wheel stands ", turned.after());
        wanted(turned, true);
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

    private void inMillimetres(CarAngles angles, boolean front) {
        Double left = angles.of(front ? Place.FRONT_LEFT : Place.REAR_LEFT, Measure.TOE);
        Double right = angles.of(front ? Place.FRONT_RIGHT : Place.REAR_RIGHT, Measure.TOE);
        Double diameter = reading.toeReadAtMm();
        if (left != null && right != null && diameter != null) {
            text.append(front ? "  front total toe is " : "  rear total toe is ");
            text.append(AngleFigures.plain(ToeMillimetres.total(left, right, diameter), 2));
            text.append(" mm at ").append(AngleFigures.plain(diameter, 1)).append(" mm\n");
        }
    }

    private void wanted(Turned turned, boolean after) {
        if (turned.outcomes().isEmpty()) {
            return;
        }
        text.append(after ? "\nThe readings become:\n" : "\nAgainst what is wanted:\n");
        for (Outcome outcome : turned.outcomes()) {
            Double value = outcome.afterDeg();
            String name = "  " + outcome.wanted().figure().said();
            text.append(name).append(" ".repeat(Math.max(1, 34 - name.length())));
            text.append(value == null ? "not read" : AngleFigures.column(value)).append("  wanted ");
            text.append(AngleFigures.plain(outcome.wanted().lowDeg(), 2)).append(" to ");
            text.append(AngleFigures.plain(outcome.wanted().highDeg(), 2));
            text.append(value == null ? "" : outcome.missDeg() > 0 ? ", outside" : ", inside")
                    .append('\n');
        }
        if (after) {
            inMillimetres(turned.after(), true);
            inMillimetres(turned.after(), false);
        }
    }
}

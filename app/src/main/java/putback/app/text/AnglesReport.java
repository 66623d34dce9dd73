package putback.app.text;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import putback.angles.adjusting.AngleJob;
import putback.angles.adjusting.Outcome;
import putback.angles.adjusting.Turned;
import putback.angles.meaning.Pointer;
import putback.angles.readings.CarAngles;
import putback.angles.readings.CarReading;
import putback.angles.readings.Figure;
import putback.angles.readings.Measure;
import putback.angles.readings.Place;
import putback.angles.readings.ToeMillimetres;

/**
 * What readings of wheel angles come to, in the pieces that text, page and paper are set from.
 *
 * @param title what the car is called; may be empty
 * @param rows as read, the front first
 * @param then the same rows as they will stand; equal where nothing is turned
 * @param facts what follows from all of it, a sentence each
 * @param gauge how far the gauge alone may put figures off; empty where that is not known
 * @param adjustable whether anything was said that can be turned
 * @param turning what to turn, in this order, a line each
 * @param straight how the steering wheel stands then; empty where that is not known
 * @param goals everything wanted, and what becomes of it
 * @param totals the total toes in mm as they will stand, where they are read so
 * @param notes what has to be said beside it
 * @param pointers what readings may come from; never a verdict
 */
public record AnglesReport(
        String title,
        List<Row> rows,
        List<Row> then,
        List<String> facts,
        String gauge,
        boolean adjustable,
        List<String> turning,
        String straight,
        List<Goal> goals,
        List<String> totals,
        List<String> notes,
        List<Pointer> pointers) {

    /**
     * A measure of one axle, in degrees; null for what was not read.
     *
     * @param joint what both together are called, total or cross; empty where they make nothing
     * @param millimetres both together in mm, with the diameter; empty where toe is not read so
     */
    public record Row(
            String name,
            @Nullable Double left,
            @Nullable Double right,
            String joint,
            @Nullable Double both,
            String millimetres) {
        /** A value in degrees and in degrees and minutes. */
        public static String shown(@Nullable Double degrees) {
            return degrees == null ? "not read" : AngleFigures.both(degrees);
        }

        /** Both together, with what they are called; empty where they make nothing. */
        public String together() {
            return both == null ? "" : joint + " " + AngleFigures.both(both);
        }
    }

    /**
     * Something wanted.
     *
     * @param before null where it was not read
     * @param after null where it was not read
     */
    public record Goal(
            String name, @Nullable Double before, @Nullable Double after, double low, double high, boolean outside) {
        /** The range, such as {@code 0.00 to 0.20 deg}. */
        public String range() {
            return AngleFigures.plain(low, 2) + " to " + AngleFigures.plain(high, 2);
        }

        /** Inside, outside, or nothing where it was not read. */
        public String verdict() {
            return after == null ? "" : outside ? "outside" : "inside";
        }
    }

    public AnglesReport {
        rows = List.copyOf(rows);
        then = List.copyOf(then);
        facts = List.copyOf(facts);
        turning = List.copyOf(turning);
        goals = List.copyOf(goals);
        totals = List.copyOf(totals);
        notes = List.copyOf(notes);
        pointers = List.copyOf(pointers);
    }

    public static AnglesReport of(AngleJob job, Turned turned) {
        CarReading reading = job.reading();
        AngleSentences sentences = new AngleSentences(reading);
        boolean adjustable = !job.adjusters().isEmpty();
        List<Goal> goals = new ArrayList<>();
        for (Outcome one : turned.outcomes()) {
            goals.add(new Goal(
                    one.wanted().figure().said(),
                    one.beforeDeg(),
                    one.afterDeg(),
                    one.wanted().lowDeg(),
                    one.wanted().highDeg(),
                    one.missDeg() > 0));
        }
        return new AnglesReport(
                job.title(),
                rows(reading, reading.angles()),
                rows(reading, turned.after()),
                sentences.facts(),
                sentences.gauge(),
                adjustable,
                AngleSentences.turning(turned),
                adjustable ? sentences.steering("Then the ", turned.after()) : "",
                goals,
                adjustable && !goals.isEmpty() ? sentences.totals(turned.after()) : List.of(),
                AngleNotes.of(job, turned),
                AngleNotes.pointers(job));
    }

    /** Whether a row will stand otherwise than it was read. */
    public boolean changes(int row) {
        return !rows.get(row).equals(then.get(row));
    }

    private static List<Row> rows(CarReading reading, CarAngles angles) {
        List<Row> rows = new ArrayList<>();
        for (boolean front : new boolean[] {true, false}) {
            Place left = front ? Place.FRONT_LEFT : Place.REAR_LEFT;
            Place right = front ? Place.FRONT_RIGHT : Place.REAR_RIGHT;
            for (Measure measure : Measure.values()) {
                Double one = angles.of(left, measure);
                Double other = angles.of(right, measure);
                if (one != null || other != null) {
                    rows.add(row(front, measure, one, other, reading.toeReadAtMm(), angles));
                }
            }
            Double one = Figure.included(left).of(angles);
            Double other = Figure.included(right).of(angles);
            if (one != null || other != null) {
                rows.add(new Row("included", one, other, "", null, ""));
            }
        }
        return rows;
    }

    private static Row row(
            boolean front,
            Measure measure,
            @Nullable Double left,
            @Nullable Double right,
            @Nullable Double diameter,
            CarAngles angles) {
        boolean toe = measure == Measure.TOE;
        Figure both = toe ? Figure.totalToe(front) : Figure.cross(front, measure);
        String millimetres = toe && left != null && right != null && diameter != null
                ? AngleFigures.plain(ToeMillimetres.total(left, right, diameter), 2) + " mm at "
                        + AngleFigures.plain(diameter, 1) + " mm"
                : "";
        String name = (front ? "front " : "rear ") + (measure == Measure.SAI ? "SAI" : measure.word());
        return new Row(name, left, right, toe ? "total" : "cross", both.of(angles), millimetres);
    }
}

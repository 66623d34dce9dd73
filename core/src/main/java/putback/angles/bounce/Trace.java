package putback.angles.bounce;

/** A recorded movement at equal steps of time: height or acceleration, the unit does not matter. */
public final class Trace {
    /** A decaying oscillation has five unknowns; below this nothing is left to judge it by. */
    static final int FEWEST = 12;

    /** How far one step of time may differ from the first; loggers round. */
    private static final double UNEVEN = 0.1;

    private final double[] seconds;
    private final double[] values;

    private Trace(double[] seconds, double[] values) {
        this.seconds = seconds;
        this.values = values;
    }

    /** What came of taking the rows as a trace. */
    public sealed interface Taken {
        record Sound(Trace trace) implements Taken {}

        /**
         * @param row index of the row that is wrong
         * @param because one line
         */
        record Faulty(int row, String because) implements Taken {}
    }

    /**
     * Takes rows as a trace.
     *
     * @param seconds times, finite
     * @param values as many, finite
     */
    public static Taken of(double[] seconds, double[] values) {
        int count = Math.min(seconds.length, values.length);
        if (count < FEWEST) {
            return new Taken.Faulty(
                    0,
                    "there are only " + count + " readings; a bounce needs at least " + FEWEST + ", better hundreds");
        }
        double step = (seconds[count - 1] - seconds[0]) / (count - 1);
        for (int i = 1; i < count; i++) {
            double here = seconds[i] - seconds[i - 1];
            if (!(here > 0)) {
                return new Taken.Faulty(i, "the time does not go on from the row before; write seconds, rising");
            }
            if (uneven(seconds, here, step)) {
                return new Taken.Faulty(
                        i,
                        "this step of time differs from the others; readings have to come at equal steps, so"
                                + " fill the gap or cut the record there");
            }
        }
        return new Taken.Sound(new Trace(seconds.clone(), values.clone()));
    }

    /** Against the mean of all, so that the rounding of one row is not taken for a gap. */
    private static boolean uneven(double[] seconds, double here, double mean) {
        double first = seconds[1] - seconds[0];
        double against = Math.abs(here - mean) < Math.abs(here - first) ? mean : first;
        return Math.abs(here - against) > UNEVEN * against;
    }

    int size() {
        return values.length;
    }

    double seconds(int row) {
        return seconds[row];
    }

    double value(int row) {
        return values[row];
    }

    /** Each so many rows of a part of it, time from 0 and values by a scale. */
    Trace part(int from, int to, int each, double level, double scale) {
        int count = (to - from + each - 1) / each;
        double[] times = new double[count];
        double[] part = new double[count];
        for (int i = 0; i < count; i++) {
            times[i] = seconds[from + i * each] - seconds[from];
            part[i] = (values[from + i * each] - level) / scale;
        }
        return new Trace(times, part);
    }

    double last() {
        return seconds[seconds.length - 1];
    }
}

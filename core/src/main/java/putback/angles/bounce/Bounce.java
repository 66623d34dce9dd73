package putback.angles.bounce;

import java.util.Arrays;
import putback.quantity.Parsed;

/** Reads the damping off a recorded bounce: from the greatest deflection on, by least squares. */
public final class Bounce {
    private static final int COARSE = 1500;
    private static final int FINE = 20_000;
    private static final double AT_REST = 0.01;
    private static final double CLEAR = 0.02;
    private static final double HARDLY_A_FIT = 0.6;
    private static final double HARDLY_A_SWING = 0.85;
    private static final double FEWEST_CYCLES = 0.7;
    private static final double STEADY = 0.002;

    private Bounce() {}

    /**
     * The damping of one corner.
     *
     * @return refused, in one line, when the trace is no oscillation that dies away. Source: SDOF
     */
    public static Parsed<Decay> of(Trace trace) {
        double rest = rest(trace);
        int from = farthest(trace, rest);
        double size = Math.abs(trace.value(from) - rest);
        if (!(size > 0)) {
            return new Parsed.Refused<>("nothing moves in it; push the corner down, let go, and record that");
        }
        int to = settled(trace, from, rest, size);
        if (to - from < Trace.FEWEST) {
            return new Parsed.Refused<>("only " + (to - from) + " readings are left from the greatest deflection on; a"
                    + " bounce needs at least " + Trace.FEWEST + ", so record longer or faster");
        }
        Trace coarse = trace.part(from, to, each(to - from, COARSE), rest, size);
        Trace fine = trace.part(from, to, each(to - from, FINE), rest, size);
        return judged(SwingSearch.best(coarse, fine), fine);
    }

    private static Parsed<Decay> judged(Swing swing, Trace trace) {
        double misses = swing.misses(trace);
        double fit = 1 - misses / spread(trace);
        if (!(fit >= HARDLY_A_FIT)) {
            return new Parsed.Refused<>(
                    "there is no oscillation in it that dies away; record one bounce after letting go,"
                            + " with the engine off");
        }
        double ratio = swing.dampingRatio();
        double hertz = swing.swing() / (2 * Math.PI);
        double noise = Math.sqrt(2 * misses / trace.size());
        double clear = Math.max(CLEAR * swing.amplitude(), Math.min(noise, swing.amplitude()));
        double cycles = clearSeconds(swing, trace, clear) * hertz;
        if (ratio > HARDLY_A_SWING || swing.swing() * trace.last() < 2 * Math.PI * FEWEST_CYCLES) {
            return new Parsed.Refused<>(
                    "there is no oscillation in it: the corner does not swing back past its level far"
                            + " enough to be measured, or the record ends too early");
        }
        if (ratio < STEADY) {
            return new Parsed.Refused<>(
                    "the oscillation does not die away; record from letting go until the corner rests");
        }
        Double peaks = Peaks.ratio(trace, swing.level(), 2 * noise + CLEAR * swing.amplitude());
        return new Parsed.Value<>(new Decay(ratio, hertz, cycles, Math.min(1, fit), peaks));
    }

    /** How long the envelope stays above a height. */
    private static double clearSeconds(Swing swing, Trace trace, double height) {
        double seconds = swing.decay() > 0 ? Math.log(swing.amplitude() / height) / swing.decay() : trace.last();
        return Math.min(seconds, trace.last());
    }

    private static double spread(Trace trace) {
        double sum = 0;
        double squares = 0;
        for (int i = 0; i < trace.size(); i++) {
            sum += trace.value(i);
            squares += trace.value(i) * trace.value(i);
        }
        return squares - sum * sum / trace.size();
    }

    /** The level at the end: middle value of the last fifth. */
    private static double rest(Trace trace) {
        int size = trace.size();
        double[] last = new double[Math.max(1, size / 5)];
        for (int i = 0; i < last.length; i++) {
            last[i] = trace.value(size - 1 - i);
        }
        Arrays.sort(last);
        return (last[(last.length - 1) / 2] + last[last.length / 2]) / 2;
    }

    private static int farthest(Trace trace, double rest) {
        int farthest = 0;
        for (int i = 1; i < trace.size(); i++) {
            if (Math.abs(trace.value(i) - rest) > Math.abs(trace.value(farthest) - rest)) {
                farthest = i;
            }
        }
        return farthest;
    }

    /** The end of what moves: readings at rest tell nothing of how it came to rest. */
    private static int settled(Trace trace, int from, double rest, double size) {
        int to = trace.size();
        while (to > from + Trace.FEWEST && Math.abs(trace.value(to - 1) - rest) < AT_REST * size) {
            to--;
        }
        return Math.min(trace.size(), to + (to - from) / 3);
    }

    private static int each(int rows, int most) {
        return (rows + most - 1) / most;
    }
}

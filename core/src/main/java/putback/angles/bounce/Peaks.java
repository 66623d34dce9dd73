package putback.angles.bounce;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The turning points of a trace, one between each two crossings of its level. */
final class Peaks {
    private Peaks() {}

    /**
     * Damping ratio by logarithmic decrement: slope of the logarithm of the peaks over half cycles.
     *
     * @param noise peaks below it are not counted
     * @return null with fewer than two peaks, or where they do not fall
     */
    static @Nullable Double ratio(Trace trace, double level, double noise) {
        List<Double> peaks = peaks(trace, level, noise);
        int count = peaks.size();
        if (count < 2) {
            return null;
        }
        double slope = 0;
        double spread = 0;
        for (int i = 0; i < count; i++) {
            double from = i - (count - 1) / 2.0;
            slope += from * Math.log(peaks.get(i));
            spread += from * from;
        }
        double ratio = Decay.ratioOf(-2 * slope / spread);
        return ratio > 0 ? ratio : null;
    }

    private static List<Double> peaks(Trace trace, double level, double noise) {
        List<Double> peaks = new ArrayList<>();
        double peak = 0;
        double side = 0;
        for (int i = 0; i < trace.size(); i++) {
            double value = trace.value(i) - level;
            if (side != 0 && value * side < 0) {
                if (peak <= noise) {
                    return peaks;
                }
                peaks.add(peak);
                peak = 0;
            }
            side = value == 0 ? side : value;
            peak = Math.max(peak, Math.abs(value));
        }
        return peaks;
    }
}

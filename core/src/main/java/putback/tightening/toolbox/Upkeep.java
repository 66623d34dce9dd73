package putback.tightening.toolbox;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What has happened to a torque wrench since it was last known to be right.
 *
 * @param calibrated last time; null when there is no record of it
 * @param operations since then, 0 or more
 * @param dropped last time; null for never
 */
public record Upkeep(
        @Nullable LocalDate calibrated,
        int operations,
        @Nullable LocalDate dropped) {

    /**
     * Why it is due for calibration on a day, one reason a line; empty when it is not. The day an interval ends is the
     * first on which it is due. A drop after the last calibration, or on the day of it, makes it due at once.
     */
    public List<String> due(LocalDate on, Interval interval) {
        List<String> reasons = new ArrayList<>();
        LocalDate last = calibrated;
        if (last == null) {
            reasons.add("no calibration on record");
        } else if (last.isAfter(on)) {
            reasons.add("its calibration is dated " + last + ", which is still to come");
        } else if (!on.isBefore(last.plusMonths(interval.months()))) {
            reasons.add("last calibrated " + last + ", more than " + months(interval.months()) + " ago");
        }
        if (operations >= interval.operations()) {
            reasons.add(operations + " operations since, and " + interval.operations() + " are allowed");
        }
        if (dropped != null && (last == null || !dropped.isBefore(last))) {
            reasons.add("dropped " + dropped);
        }
        return List.copyOf(reasons);
    }

    /** The last day on which it is not due by the calendar; null without a calibration. */
    public @Nullable LocalDate goodUntil(Interval interval) {
        return calibrated == null
                ? null
                : calibrated.plusMonths(interval.months()).minusDays(1);
    }

    private static String months(int months) {
        return months == 1 ? "a month" : months + " months";
    }
}

package putback.labour.time;

import java.util.List;

/**
 * The distribution of a job's time.
 *
 * @param fixed minutes of the steps that are always the same
 * @param step of the grid, minutes
 * @param masses of the other steps together
 * @param common standard deviation of the logarithm of the car's factor
 */
record Spread(double fixed, double step, Masses masses, double common) {
    /** A width of so many cells leaves percentiles of a smooth sum within a thousandth of the width. */
    private static final double CELLS = 64;

    private static final double CELLS_OF_WHAT_ALWAYS_SCATTERS = 4;

    /** A few wide steps are steep at their short end, where many together are smooth. */
    private static final double FEW = 4;

    /** So many cells for a single step, and no more, whatever its delay. */
    private static final double MOST_CELLS = 1 << 16;

    private static final double FINEST_MINUTES = 0.02;
    private static final double POINT = 1e-7;
    private static final double CLOSE = 1e-7;
    private static final int MOST_ROUNDS = 200;

    static Spread of(List<StepTime> steps, double common, double fineness) {
        double fixed = 0;
        double always = 0;
        double all = 0;
        double longest = 0;
        int scattering = 0;
        for (StepTime one : steps) {
            fixed += one.isFixed() ? one.time().medianMinutes() : 0;
            scattering += one.isFixed() ? 0 : 1;
            double width = one.time().width();
            always += width * width;
            all += width * width + one.seizure().squareWidth();
            longest = Math.max(longest, one.longest());
        }
        double wanted = Math.min(
                Math.sqrt(all) / CELLS, Math.max(Math.sqrt(always) / CELLS_OF_WHAT_ALWAYS_SCATTERS, FINEST_MINUTES));
        double usual = Math.max(wanted / (1 + FEW / scattering), longest / MOST_CELLS);
        Gridding grid = new Gridding(all == 0 ? POINT : usual / fineness);
        Masses sum = Masses.NOTHING;
        for (StepTime one : steps) {
            sum = one.isFixed() ? sum : sum.plus(grid.of(one));
        }
        return new Spread(fixed, grid.step(), sum, common);
    }

    /** Chance of no more than some minutes. */
    double below(double minutes) {
        if (common == 0) {
            return masses.below((minutes - fixed) / step);
        }
        if (minutes <= 0) {
            return 0;
        }
        double sum = 0;
        for (int i = 0; i < masses.mass().length; i++) {
            double one = fixed + (masses.first() + i) * step;
            sum += masses.mass()[i] * (one <= 0 ? 1 : Normal.below(Math.log(minutes / one) / common));
        }
        return sum;
    }

    /** By false position with halved weights (the Illinois method), which keeps the answer between its ends. */
    double quantile(double chance) {
        double factor = Math.exp(8 * common);
        double low = Math.max(0, fixed + (masses.first() - 1) * step) / factor;
        double high = (fixed + (masses.first() + masses.mass().length) * step) * factor;
        double lowGap = below(low) - chance;
        double highGap = below(high) - chance;
        int side = 0;
        for (int i = 0; i < MOST_ROUNDS && high - low > CLOSE * Math.max(1, high); i++) {
            double middle = i % 3 == 2 ? (low + high) / 2 : (low * highGap - high * lowGap) / (highGap - lowGap);
            double gap = below(middle) - chance;
            if (gap < 0) {
                low = middle;
                lowGap = gap;
                highGap = side == -1 ? highGap / 2 : highGap;
                side = -1;
            } else {
                high = middle;
                highGap = gap;
                lowGap = side == 1 ? lowGap / 2 : lowGap;
                side = 1;
            }
        }
        return (low + high) / 2;
    }
}

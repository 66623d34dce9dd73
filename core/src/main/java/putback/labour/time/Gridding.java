package putback.labour.time;

/**
 * Puts lognormal times on an even grid. Mass, mean and variance of each cell are kept by three points (its own and its
 * neighbours), so that sums keep theirs too, however coarse the grid is for a single step.
 *
 * @param step minutes
 */
record Gridding(double step) {
    /** A step with its seizure. */
    Masses of(StepTime one) {
        Masses time = one.time().isFixed() ? point(one.time().medianMinutes()) : of(one.time());
        if (!one.seizure().isPossible()) {
            return time;
        }
        Masses extra = null;
        for (Seizure.Outcome outcome : one.seizure().outcomes()) {
            Masses delay = outcome.extra().isFixed() ? point(outcome.extra().medianMinutes()) : of(outcome.extra());
            double chance = one.seizure().chance() * outcome.chance();
            extra = extra == null ? scaled(delay, chance) : mixed(extra, delay, chance);
        }
        return extra == null
                ? time
                : time.plus(mixed(extra, Masses.NOTHING, 1 - one.seizure().chance()));
    }

    private static Masses scaled(Masses masses, double chance) {
        return mixed(new Masses(masses.first(), new double[1]), masses, chance);
    }

    private static Masses mixed(Masses some, Masses other, double chance) {
        int first = Math.min(some.first(), other.first());
        int end = Math.max(some.first() + some.mass().length, other.first() + other.mass().length);
        double[] mass = new double[end - first];
        System.arraycopy(some.mass(), 0, mass, some.first() - first, some.mass().length);
        for (int i = 0; i < other.mass().length; i++) {
            mass[other.first() - first + i] += chance * other.mass()[i];
        }
        return new Masses(first, mass);
    }

    /** A time that is always the same, split between its two neighbours; the mean is kept. */
    private Masses point(double minutes) {
        double place = minutes / step;
        int low = (int) Math.floor(place);
        double part = place - low;
        return new Masses(low, part == 0 ? new double[] {1} : new double[] {1 - part, part});
    }

    private Masses of(Lognormal time) {
        int low = (int) Math.rint(time.medianMinutes() * Math.exp(-time.cut() * time.spread()) / step);
        int high = (int) Math.rint(time.longest() / step);
        double[] mass = new double[high - low + 3];
        double[] before = moments(time, (low - 0.5) * step);
        double whole = 0;
        for (int k = low; k <= high; k++) {
            double[] after = moments(time, (k + 0.5) * step);
            double zeroth = after[0] - before[0];
            double first = (after[1] - before[1]) / step - k * zeroth;
            double second = (after[2] - before[2]) / (step * step) - 2.0 * k * first - (double) k * k * zeroth;
            mass[k - low] += (second - first) / 2;
            mass[k - low + 1] += zeroth - second;
            mass[k - low + 2] += (second + first) / 2;
            whole += zeroth;
            before = after;
        }
        for (int i = 0; i < mass.length; i++) {
            mass[i] /= whole;
        }
        return new Masses(low - 1, mass);
    }

    /** Mass, first and second moment below a time. */
    private static double[] moments(Lognormal time, double minutes) {
        if (minutes <= 0) {
            return new double[3];
        }
        double z = Math.log(minutes / time.medianMinutes()) / time.spread();
        return new double[] {
            Normal.below(z),
            time.mean() * Normal.below(z - time.spread()),
            time.meanSquare() * Normal.below(z - 2 * time.spread())
        };
    }
}

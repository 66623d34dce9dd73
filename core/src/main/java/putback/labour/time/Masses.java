package putback.labour.time;

/**
 * Chances on the points of an even grid: {@code mass[i]} at {@code (first + i) * step}. Single ones may be a little below
 * zero, since mean and variance of what was put on the grid are kept.
 */
record Masses(int first, double[] mass) {
    /** What is cut off at either end after each sum. */
    private static final double TRIMMED = 1e-11;

    /** From here on a transform is faster than adding up directly. */
    private static final int LONG = 400;

    static final Masses NOTHING = new Masses(0, new double[] {1});

    /** The sum of two independent amounts. */
    Masses plus(Masses other) {
        double[] few = mass.length < other.mass.length ? mass : other.mass;
        double[] many = few == mass ? other.mass : mass;
        double[] sum = few.length > LONG ? Fourier.product(few, many) : directly(few, many);
        return new Masses(first + other.first, sum).trimmed();
    }

    private static double[] directly(double[] few, double[] many) {
        double[] sum = new double[few.length + many.length - 1];
        for (int i = 0; i < few.length; i++) {
            double factor = few[i];
            if (factor != 0) {
                for (int j = 0; j < many.length; j++) {
                    sum[i + j] += factor * many[j];
                }
            }
        }
        return sum;
    }

    private Masses trimmed() {
        int low = 0;
        double cut = mass[0];
        while (low < mass.length - 1 && Math.abs(cut) < TRIMMED) {
            cut += mass[++low];
        }
        int high = mass.length - 1;
        cut = mass[high];
        while (high > low && Math.abs(cut) < TRIMMED) {
            cut += mass[--high];
        }
        return new Masses(first + low, java.util.Arrays.copyOfRange(mass, low, high + 1));
    }

    /** Chance of no more than a place, in steps; each mass lies evenly half a step to either side of its point. */
    double below(double place) {
        double at = place - first + 0.5;
        int whole = (int) Math.max(-1, Math.min(mass.length, Math.floor(at)));
        double sum = 0;
        for (int i = 0; i < Math.min(whole, mass.length); i++) {
            sum += mass[i];
        }
        return whole < 0 || whole >= mass.length ? sum : sum + (at - whole) * mass[whole];
    }
}

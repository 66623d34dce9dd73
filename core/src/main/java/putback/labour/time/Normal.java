package putback.labour.time;

/** The standard normal distribution. */
public final class Normal {
    /** Beyond this nothing is left in double precision. */
    private static final double FARTHEST = 37;

    private static final double[] ABOVE = {
        3.52624965998911e-2,
        0.700383064443688,
        6.37396220353165,
        33.912866078383,
        112.079291497871,
        221.213596169931,
        220.206867912376
    };
    private static final double[] BELOW = {
        8.83883476483184e-2,
        1.75566716318264,
        16.064177579207,
        86.7807322029461,
        296.564248779674,
        637.333633378831,
        793.826512519948,
        440.413735824752
    };

    private Normal() {}

    /** Chance of no more than z, to 1e-14; far out to 1e-7 of itself. Source: HART68, in the form of West 2005. */
    public static double below(double z) {
        double size = Math.abs(z);
        double tail = size > FARTHEST ? 0 : tail(size);
        return z > 0 ? 1 - tail : tail;
    }

    private static double tail(double size) {
        double density = Math.exp(-size * size / 2);
        if (size < 7.07106781186547) {
            return density * polynomial(ABOVE, size) / polynomial(BELOW, size);
        }
        double fraction = size + 1 / (size + 2 / (size + 3 / (size + 4 / (size + 0.65))));
        return density / fraction / 2.506628274631;
    }

    private static double polynomial(double[] coefficients, double x) {
        double sum = 0;
        for (double coefficient : coefficients) {
            sum = sum * x + coefficient;
        }
        return sum;
    }

    /**
     * What is not exceeded with a chance, by halving.
     *
     * @param chance above 0, below 1
     */
    public static double quantile(double chance) {
        double low = -FARTHEST;
        double high = FARTHEST;
        for (int i = 0; i < 70; i++) {
            double middle = (low + high) / 2;
            if (below(middle) < chance) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }
}

package putback.labour.learnt;

/** The regularised incomplete beta function, by continued fraction (modified Lentz). Source: AS64, 26.5.8. */
final class Beta {
    private static final double TINY = 1e-300;
    private static final double CLOSE = 1e-15;
    private static final int MOST_TERMS = 100_000;
    private static final double[] LANCZOS = {
        0.99999999999980993,
        676.5203681218851,
        -1259.1392167224028,
        771.32342877765313,
        -176.61502916214059,
        12.507343278686905,
        -0.13857109526572012,
        9.9843695780195716e-6,
        1.5056327351493116e-7
    };

    private Beta() {}

    /** Share of a beta distribution below x; both shapes above 0. */
    static double below(double x, double a, double b) {
        if (x <= 0 || x >= 1) {
            return x <= 0 ? 0 : 1;
        }
        double front = Math.exp(logGamma(a + b) - logGamma(a) - logGamma(b) + a * Math.log(x) + b * Math.log1p(-x));
        return x < (a + 1) / (a + b + 2) ? front * fraction(x, a, b) / a : 1 - front * fraction(1 - x, b, a) / b;
    }

    private static double fraction(double x, double a, double b) {
        double c = 1;
        double d = 1 / kept(1 - (a + b) * x / (a + 1));
        double value = d;
        for (int m = 1; m < MOST_TERMS; m++) {
            double even = m * (b - m) * x / ((a + 2 * m - 1) * (a + 2 * m));
            d = 1 / kept(1 + even * d);
            c = kept(1 + even / c);
            value *= d * c;
            double odd = -(a + m) * (a + b + m) * x / ((a + 2 * m) * (a + 2 * m + 1));
            d = 1 / kept(1 + odd * d);
            c = kept(1 + odd / c);
            value *= d * c;
            if (Math.abs(d * c - 1) < CLOSE) {
                break;
            }
        }
        return value;
    }

    private static double kept(double value) {
        return Math.abs(value) < TINY ? TINY : value;
    }

    /** Lanczos' approximation (g = 7, nine terms), for arguments above 0; below 1/2 by one step upward. */
    static double logGamma(double x) {
        if (x < 0.5) {
            return logGamma(x + 1) - Math.log(x);
        }
        double sum = LANCZOS[0];
        for (int i = 1; i < LANCZOS.length; i++) {
            sum += LANCZOS[i] / (x - 1 + i);
        }
        double t = x + 6.5;
        return 0.5 * Math.log(2 * Math.PI) + (x - 0.5) * Math.log(t) - t + Math.log(sum);
    }

    /** What a beta distribution does not exceed with a chance, by halving. */
    static double quantile(double chance, double a, double b) {
        double low = 0;
        double high = 1;
        for (int i = 0; i < 60; i++) {
            double middle = (low + high) / 2;
            if (below(middle, a, b) < chance) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }

    /** What Student's t with some degrees of freedom does not exceed with a chance. */
    static double studentQuantile(double chance, double freedom) {
        if (chance == 0.5) {
            return 0;
        }
        double tail = 2 * Math.min(chance, 1 - chance);
        double share = quantile(tail, freedom / 2, 0.5);
        double size = Math.sqrt(freedom * (1 - share) / share);
        return chance < 0.5 ? -size : size;
    }
}

package putback.angles.bounce;

import putback.angles.numbers.Elimination;

/**
 * A decaying oscillation: exp(-decay t) (cosine cos(swing t) + sine sin(swing t)) + level.
 *
 * @param decay per second
 * @param swing damped, radians per second
 */
record Swing(double decay, double swing, double cosine, double sine, double level) {
    static final int UNKNOWNS = 5;

    double at(double seconds) {
        return Math.exp(-decay * seconds) * (cosine * Math.cos(swing * seconds) + sine * Math.sin(swing * seconds))
                + level;
    }

    /** Largest height of the envelope. */
    double amplitude() {
        return Math.hypot(cosine, sine);
    }

    /** Share of critical damping. Source: SDOF, zeta = decay / sqrt(decay^2 + swing^2). */
    double dampingRatio() {
        return decay / Math.hypot(decay, swing);
    }

    /** Sum of squares that it leaves. */
    double misses(Trace trace) {
        double sum = 0;
        for (int i = 0; i < trace.size(); i++) {
            double miss = trace.value(i) - at(trace.seconds(i));
            sum += miss * miss;
        }
        return sum;
    }

    /** Derivatives by decay, swing, cosine, sine and level. */
    double[] slopes(double seconds) {
        double envelope = Math.exp(-decay * seconds);
        double c = envelope * Math.cos(swing * seconds);
        double s = envelope * Math.sin(swing * seconds);
        return new double[] {
            -seconds * (cosine * c + sine * s), seconds * (sine * c - cosine * s), c, s, 1,
        };
    }

    Swing moved(double[] by) {
        return new Swing(decay + by[0], swing + by[1], cosine + by[2], sine + by[3], level + by[4]);
    }

    /** The best of a given decay and swing, by linear least squares; all of it is zero where there is none. */
    static Swing best(Trace trace, double decay, double swing) {
        Swing shape = new Swing(decay, swing, 0, 0, 0);
        double[][] normal = new double[3][3];
        double[] right = new double[3];
        for (int i = 0; i < trace.size(); i++) {
            double[] slopes = shape.slopes(trace.seconds(i));
            for (int row = 0; row < 3; row++) {
                right[row] += slopes[row + 2] * trace.value(i);
                for (int column = 0; column < 3; column++) {
                    normal[row][column] += slopes[row + 2] * slopes[column + 2];
                }
            }
        }
        Elimination elimination = Elimination.of(normal);
        double[] found = elimination.isSingular() ? new double[3] : elimination.solve(right);
        return new Swing(decay, swing, found[0], found[1], found[2]);
    }
}

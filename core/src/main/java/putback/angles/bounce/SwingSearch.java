package putback.angles.bounce;

import putback.angles.numbers.Elimination;

/**
 * Finds the decaying oscillation that leaves the least sum of squares: a grid over frequency and damping with the rest
 * linear, then Levenberg-Marquardt on all five unknowns. Source: ⟨LM63⟩.
 */
final class SwingSearch {
    private static final double[] RATIOS = {0.005, 0.03, 0.06, 0.1, 0.15, 0.2, 0.27, 0.35, 0.45, 0.55, 0.65, 0.8};
    private static final double GRID_RATIO = 1.05;
    private static final double HIGHEST_HERTZ = 40;
    private static final int ROUNDS = 200;
    private static final double STILL = 1e-15;

    private SwingSearch() {}

    /**
     * @param coarse few readings, for the grid
     * @param fine all of them
     */
    static Swing best(Trace coarse, Trace fine) {
        double length = coarse.last();
        double nyquist = 0.4 * (coarse.size() - 1) / length;
        Swing best = Swing.best(coarse, 0, Math.PI / length);
        double least = best.misses(coarse);
        for (double hertz = 0.5 / length; hertz < Math.min(nyquist, HIGHEST_HERTZ); hertz *= GRID_RATIO) {
            double swing = 2 * Math.PI * hertz;
            for (double ratio : RATIOS) {
                Swing here = Swing.best(coarse, swing * ratio / Math.sqrt(1 - ratio * ratio), swing);
                double misses = here.misses(coarse);
                if (misses < least) {
                    best = here;
                    least = misses;
                }
            }
        }
        return refined(best, fine);
    }

    private static Swing refined(Swing start, Trace trace) {
        Swing best = start;
        double least = best.misses(trace);
        double damping = 1e-3;
        for (int round = 0; round < ROUNDS && damping < 1e12; round++) {
            Swing tried = stepped(best, trace, damping);
            double misses = tried.misses(trace);
            if (misses < least) {
                boolean still = least - misses <= STILL * least;
                best = tried;
                least = misses;
                damping = Math.max(damping / 10, 1e-12);
                if (still) {
                    break;
                }
            } else {
                damping *= 10;
            }
        }
        return best;
    }

    private static Swing stepped(Swing from, Trace trace, double damping) {
        int size = Swing.UNKNOWNS;
        double[][] normal = new double[size][size];
        double[] right = new double[size];
        for (int i = 0; i < trace.size(); i++) {
            double[] slopes = from.slopes(trace.seconds(i));
            double miss = trace.value(i) - from.at(trace.seconds(i));
            for (int row = 0; row < size; row++) {
                right[row] += slopes[row] * miss;
                for (int column = 0; column < size; column++) {
                    normal[row][column] += slopes[row] * slopes[column];
                }
            }
        }
        for (int row = 0; row < size; row++) {
            normal[row][row] *= 1 + damping;
        }
        Elimination elimination = Elimination.of(normal);
        return elimination.isSingular() ? from : from.moved(elimination.solve(right));
    }
}

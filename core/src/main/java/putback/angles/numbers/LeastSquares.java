package putback.angles.numbers;

import org.jspecify.annotations.Nullable;

/**
 * Least squares in a few unknowns, free or with inequalities. Source: textbook, Lawson and Hanson, Solving Least Squares
 * Problems, chapters 11 and 23: reflections for the free problem; with inequalities its least-distance form, whose dual
 * has unknowns that are not negative.
 */
public final class LeastSquares {
    private static final double NOTHING = 1e-13;
    private static final double TOLERANCE = 1e-11;
    private static final int ROUNDS_EACH = 30;

    private LeastSquares() {}

    /**
     * The unknowns with the least sum of squared misses.
     *
     * @param rows with the wanted value last in each; independent columns, at least as many rows as unknowns; not changed
     */
    public static double[] free(double[][] rows) {
        double[][] triangle = reflected(rows);
        return back(triangle, lastColumn(triangle));
    }

    /**
     * The same while some sums are not below their limits.
     *
     * @param rows as for {@link #free}
     * @param above factors of each sum with its lower limit last
     * @return null where no unknowns keep all of them
     */
    public static double @Nullable [] bounded(double[][] rows, double[][] above) {
        double[][] triangle = reflected(rows);
        int size = triangle.length;
        double[] middle = lastColumn(triangle);
        double[][] columns = new double[above.length][];
        for (int i = 0; i < above.length; i++) {
            columns[i] = column(triangle, above[i], middle, size);
        }
        double[] wanted = new double[size + 1];
        wanted[size] = 1;
        double[] shares = notNegative(columns, wanted);
        double[] rest = wanted.clone();
        for (int i = 0; i < columns.length; i++) {
            for (int j = 0; j <= size; j++) {
                rest[j] -= shares[i] * columns[i][j];
            }
        }
        if (!(rest[size] > TOLERANCE)) {
            return null;
        }
        double[] moved = middle.clone();
        for (int j = 0; j < size; j++) {
            moved[j] -= rest[j] / rest[size];
        }
        return back(triangle, moved);
    }

    /** One inequality in the turned unknowns, one long, its limit last. */
    private static double[] column(double[][] triangle, double[] above, double[] middle, int size) {
        double[] column = new double[size + 1];
        double limit = above[size];
        double square = 0;
        for (int j = 0; j < size; j++) {
            double sum = above[j];
            for (int k = 0; k < j; k++) {
                sum -= triangle[k][j] * column[k];
            }
            column[j] = sum / triangle[j][j];
            limit -= column[j] * middle[j];
            square += column[j] * column[j];
        }
        column[size] = limit;
        double length = Math.sqrt(square);
        for (int j = 0; length > 0 && j <= size; j++) {
            column[j] /= length;
        }
        return column;
    }

    private static double[] lastColumn(double[][] triangle) {
        double[] last = new double[triangle.length];
        for (int i = 0; i < last.length; i++) {
            last[i] = triangle[i][last.length];
        }
        return last;
    }

    /** Turned by reflections until all below the diagonal is nothing; the rows above it. */
    private static double[][] reflected(double[][] rows) {
        int size = rows[0].length - 1;
        double[][] turned = new double[rows.length][];
        for (int i = 0; i < rows.length; i++) {
            turned[i] = rows[i].clone();
        }
        for (int column = 0; column < size; column++) {
            reflect(turned, column);
        }
        double[][] triangle = new double[size][];
        System.arraycopy(turned, 0, triangle, 0, size);
        return triangle;
    }

    private static void reflect(double[][] rows, int column) {
        double square = 0;
        for (int i = column; i < rows.length; i++) {
            square += rows[i][column] * rows[i][column];
        }
        double top = rows[column][column];
        double length = top > 0 ? -Math.sqrt(square) : Math.sqrt(square);
        if (length == 0) {
            rows[column][column] = NOTHING;
            return;
        }
        double[] normal = new double[rows.length];
        for (int i = column; i < rows.length; i++) {
            normal[i] = rows[i][column];
        }
        normal[column] -= length;
        double half = -length * normal[column];
        for (int j = column; j < rows[0].length; j++) {
            double sum = 0;
            for (int i = column; i < rows.length; i++) {
                sum += normal[i] * rows[i][j];
            }
            for (int i = column; i < rows.length; i++) {
                rows[i][j] -= sum / half * normal[i];
            }
        }
    }

    private static double[] back(double[][] triangle, double[] right) {
        int size = triangle.length;
        double[] unknowns = new double[size];
        for (int i = size - 1; i >= 0; i--) {
            double sum = right[i];
            for (int j = i + 1; j < size; j++) {
                sum -= triangle[i][j] * unknowns[j];
            }
            unknowns[i] = sum / triangle[i][i];
        }
        return unknowns;
    }

    /** Shares of the columns, none negative, that come nearest to what is wanted. */
    private static double[] notNegative(double[][] columns, double[] wanted) {
        double[] shares = new double[columns.length];
        boolean[] used = new boolean[columns.length];
        boolean[] passed = new boolean[columns.length];
        int rounds = ROUNDS_EACH * (columns.length + 1);
        for (int round = 0; round < rounds; round++) {
            int steepest = steepest(columns, rest(columns, shares, wanted), used, passed);
            if (steepest < 0) {
                break;
            }
            used[steepest] = true;
            double[] found = among(columns, used, wanted);
            if (!(found[steepest] > 0)) {
                used[steepest] = false;
                passed[steepest] = true;
                continue;
            }
            java.util.Arrays.fill(passed, false);
            settle(columns, wanted, shares, used, found);
        }
        return shares;
    }

    /** Walks to what was found, dropping each column whose share would fall below nothing on the way. */
    private static void settle(double[][] columns, double[] wanted, double[] shares, boolean[] used, double[] first) {
        double[] found = first;
        for (int drops = 0; drops <= columns.length; drops++) {
            double step = 1;
            int dropped = -1;
            for (int i = 0; i < shares.length; i++) {
                if (used[i] && found[i] <= 0 && shares[i] / (shares[i] - found[i]) < step) {
                    step = shares[i] / (shares[i] - found[i]);
                    dropped = i;
                }
            }
            for (int i = 0; i < shares.length; i++) {
                shares[i] = used[i] ? shares[i] + step * (found[i] - shares[i]) : 0;
            }
            if (dropped < 0) {
                return;
            }
            used[dropped] = false;
            shares[dropped] = 0;
            found = among(columns, used, wanted);
        }
    }

    private static double[] rest(double[][] columns, double[] shares, double[] wanted) {
        double[] rest = wanted.clone();
        for (int i = 0; i < columns.length; i++) {
            for (int j = 0; shares[i] != 0 && j < rest.length; j++) {
                rest[j] -= shares[i] * columns[i][j];
            }
        }
        return rest;
    }

    private static int steepest(double[][] columns, double[] rest, boolean[] used, boolean[] passed) {
        int steepest = -1;
        double most = TOLERANCE;
        for (int i = 0; i < columns.length; i++) {
            double slope = 0;
            for (int j = 0; !used[i] && !passed[i] && j < rest.length; j++) {
                slope += columns[i][j] * rest[j];
            }
            if (slope > most) {
                most = slope;
                steepest = i;
            }
        }
        return steepest;
    }

    /** The free solution among the columns in use; 0 for the others. */
    private static double[] among(double[][] columns, boolean[] used, double[] wanted) {
        int count = 0;
        for (boolean one : used) {
            count += one ? 1 : 0;
        }
        double[] all = new double[columns.length];
        if (count == 0) {
            return all;
        }
        double[][] rows = new double[Math.max(wanted.length, count)][count + 1];
        for (int j = 0; j < wanted.length; j++) {
            int at = 0;
            for (int i = 0; i < columns.length; i++) {
                if (used[i]) {
                    rows[j][at++] = columns[i][j];
                }
            }
            rows[j][count] = wanted[j];
        }
        double[] found = free(rows);
        int at = 0;
        for (int i = 0; i < columns.length; i++) {
            all[i] = used[i] ? found[at++] : 0;
        }
        return all;
    }
}

package putback.angles.numbers;

/**
 * A square system of linear equations, factored once by elimination with row exchanges. Meant for a dozen unknowns.
 * Source: textbook method.
 */
public final class Elimination {
    private static final double NOTHING = 1e-13;

    private final double[][] factors;
    private final int[] order;
    private final boolean singular;
    private final int sign;

    private Elimination(double[][] factors, int[] order, boolean singular, int sign) {
        this.factors = factors;
        this.order = order;
        this.singular = singular;
        this.sign = sign;
    }

    /**
     * Factors the system.
     *
     * @param matrix square, rows first; it is not changed
     */
    public static Elimination of(double[][] matrix) {
        int size = matrix.length;
        double[][] factors = new double[size][];
        int[] order = new int[size];
        double[] scale = new double[size];
        for (int row = 0; row < size; row++) {
            factors[row] = matrix[row].clone();
            order[row] = row;
            scale[row] = largest(factors[row]);
        }
        int sign = 1;
        boolean singular = false;
        for (int column = 0; column < size; column++) {
            int pivot = pivot(factors, scale, column);
            if (!(Math.abs(factors[pivot][column]) > NOTHING * scale[pivot])) {
                singular = true;
                break;
            }
            if (pivot != column) {
                swap(factors, order, scale, pivot, column);
                sign = -sign;
            }
            sign = factors[column][column] < 0 ? -sign : sign;
            reduce(factors, column);
        }
        return new Elimination(factors, order, singular, singular ? 0 : sign);
    }

    private static double largest(double[] row) {
        double largest = 0;
        for (double value : row) {
            largest = Math.max(largest, Math.abs(value));
        }
        return largest == 0 ? 1 : largest;
    }

    private static int pivot(double[][] factors, double[] scale, int column) {
        int best = column;
        for (int row = column + 1; row < factors.length; row++) {
            if (Math.abs(factors[row][column]) / scale[row] > Math.abs(factors[best][column]) / scale[best]) {
                best = row;
            }
        }
        return best;
    }

    private static void swap(double[][] factors, int[] order, double[] scale, int one, int other) {
        double[] row = factors[one];
        factors[one] = factors[other];
        factors[other] = row;
        int place = order[one];
        order[one] = order[other];
        order[other] = place;
        double size = scale[one];
        scale[one] = scale[other];
        scale[other] = size;
    }

    private static void reduce(double[][] factors, int column) {
        double[] top = factors[column];
        for (int row = column + 1; row < factors.length; row++) {
            double[] below = factors[row];
            double share = below[column] / top[column];
            below[column] = share;
            for (int i = column + 1; i < top.length; i++) {
                below[i] -= share * top[i];
            }
        }
    }

    /** Whether the equations do not settle all unknowns. */
    public boolean isSingular() {
        return singular;
    }

    /** Sign of the determinant; 0 when singular. */
    public int determinantSign() {
        return sign;
    }

    /**
     * The unknowns for one right-hand side.
     *
     * @throws IllegalStateException when the system is singular
     */
    public double[] solve(double[] right) {
        if (singular) {
            throw new IllegalStateException("a singular system has no single solution");
        }
        int size = factors.length;
        double[] unknowns = new double[size];
        for (int row = 0; row < size; row++) {
            double sum = right[order[row]];
            for (int i = 0; i < row; i++) {
                sum -= factors[row][i] * unknowns[i];
            }
            unknowns[row] = sum;
        }
        for (int row = size - 1; row >= 0; row--) {
            double sum = unknowns[row];
            for (int i = row + 1; i < size; i++) {
                sum -= factors[row][i] * unknowns[i];
            }
            unknowns[row] = sum / factors[row][row];
        }
        return unknowns;
    }
}

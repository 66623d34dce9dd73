package putback.plan.selection;

import java.util.Arrays;

/**
 * A linear programme under the dual simplex method: least cost, variables between bounds, rows that ask for at least so
 * much.
 *
 * <p>Only the columns of variables outside the basis are kept. Columns, rows and bounds can be added and changed at any
 * time without losing what was worked out before: with costs of at least 0 every basis stays a start for the dual
 * method. Results carry rounding errors; whoever needs certainty checks them ({@link Relaxation}).
 */
final class Tableau {
    private static final double TINY = 1e-11;
    private static final double PIVOT = 1e-7;
    private static final double FEASIBLE = 1e-7;
    private static final int SPARSE = 3;

    private final double[] lower;
    private final double[] upper;
    private final int[] rowOf;
    private final int[] columnOf;
    /** For columns: the value of their variable, one of its bounds. */
    private final double[] at;

    private double[][] coefficients = new double[32][];
    private double[] basicValue = new double[32];
    private int[] basic = new int[32];
    private int rows;
    private double[] reduced = new double[32];
    private int[] outside = new int[32];
    private int columns;
    private double raised;
    private int rayRow = -1;
    /** Which columns of the row of the last pivot are not 0. */
    private int[] filled = new int[32];

    private int filledCount;
    private int raySign;

    /**
     * @param variables how many there can be at most; they are numbered from 0
     */
    Tableau(int variables) {
        lower = new double[variables];
        upper = new double[variables];
        at = new double[variables];
        rowOf = new int[variables];
        columnOf = new int[variables];
        Arrays.fill(rowOf, -1);
        Arrays.fill(columnOf, -1);
    }

    boolean has(int variable) {
        return rowOf[variable] >= 0 || columnOf[variable] >= 0;
    }

    /** A new variable, at its lower bound. */
    void addColumn(int variable, double cost, double from, double to) {
        if (columns == reduced.length) {
            reduced = Arrays.copyOf(reduced, 2 * columns);
            outside = Arrays.copyOf(outside, 2 * columns);
            filled = new int[2 * columns];
            for (int row = 0; row < rows; row++) {
                coefficients[row] = Arrays.copyOf(coefficients[row], 2 * columns);
            }
        }
        for (int row = 0; row < rows; row++) {
            coefficients[row][columns] = 0;
        }
        reduced[columns] = cost;
        outside[columns] = variable;
        columnOf[variable] = columns++;
        lower[variable] = from;
        upper[variable] = to;
        at[variable] = from;
    }

    /** Asks that the sum of some variables less the sum of others is at least so much; the rest is a new variable. */
    void addRow(int rest, int[] plus, int[] minus, double least) {
        if (rows == basic.length) {
            coefficients = Arrays.copyOf(coefficients, 2 * rows);
            basicValue = Arrays.copyOf(basicValue, 2 * rows);
            basic = Arrays.copyOf(basic, 2 * rows);
        }
        double[] row = new double[reduced.length];
        double value = -least;
        for (int variable : plus) {
            value += value(variable);
            addTo(row, variable, 1);
        }
        for (int variable : minus) {
            value -= value(variable);
            addTo(row, variable, -1);
        }
        coefficients[rows] = row;
        basicValue[rows] = value;
        basic[rows] = rest;
        rowOf[rest] = rows++;
        lower[rest] = 0;
        upper[rest] = Double.POSITIVE_INFINITY;
    }

    private void addTo(double[] row, int variable, int factor) {
        if (columnOf[variable] >= 0) {
            row[columnOf[variable]] -= factor;
            return;
        }
        double[] own = coefficients[rowOf[variable]];
        for (int column = 0; column < columns; column++) {
            row[column] += factor * own[column];
        }
    }

    double value(int variable) {
        return rowOf[variable] >= 0 ? basicValue[rowOf[variable]] : at[variable];
    }

    /** What one more of a variable costs; 0 for one in the basis. */
    double reducedCost(int variable) {
        return columnOf[variable] >= 0 ? reduced[columnOf[variable]] : 0;
    }

    /** How much the cost has risen by pivots since the last call. */
    double raised() {
        double sum = raised;
        raised = 0;
        return sum;
    }

    void bound(int variable, double from, double to) {
        lower[variable] = from;
        upper[variable] = to;
        int column = columnOf[variable];
        if (column >= 0) {
            move(column, reduced[column] < 0 ? to : from);
        }
    }

    private void move(int column, double to) {
        double change = to - at[outside[column]];
        if (change != 0) {
            for (int row = 0; row < rows; row++) {
                basicValue[row] -= coefficients[row][column] * change;
            }
            at[outside[column]] = to;
        }
    }

    /** One step; false when there is none to take, because all is within bounds or nothing can bring it there. */
    boolean step() {
        int row = farthestOff();
        if (row < 0) {
            return false;
        }
        boolean tooSmall = basicValue[row] < lower[basic[row]];
        int column = entering(coefficients[row], tooSmall ? -1 : 1);
        if (column < 0) {
            return false;
        }
        pivot(row, column, tooSmall ? lower[basic[row]] : upper[basic[row]]);
        return true;
    }

    /** Looks for a variable that nothing can bring within its bounds. */
    void findRay() {
        int row = farthestOff();
        rayRow = row;
        raySign = row >= 0 && basicValue[row] < lower[basic[row]] ? -1 : 1;
        if (row >= 0 && entering(coefficients[row], raySign) >= 0) {
            rayRow = -1;
        }
    }

    boolean hasRay() {
        return rayRow >= 0;
    }

    /** The price of a variable in a sum that proves that there is no solution; 0 where none is proven. */
    double ray(int variable) {
        if (rayRow < 0) {
            return 0;
        }
        return rowOf[variable] == rayRow
                ? -raySign
                : columnOf[variable] >= 0 ? -raySign * coefficients[rayRow][columnOf[variable]] : 0;
    }

    private int farthestOff() {
        int farthest = -1;
        double most = FEASIBLE;
        for (int row = 0; row < rows; row++) {
            double value = basicValue[row];
            double off = Math.max(lower[basic[row]] - value, value - upper[basic[row]]);
            if (off > most) {
                most = off;
                farthest = row;
            }
        }
        return farthest;
    }

    /** The column that keeps all reduced costs right, the one with the larger coefficient among equals. */
    private int entering(double[] row, int sign) {
        int best = -1;
        double least = Double.POSITIVE_INFINITY;
        double size = 0;
        for (int column = 0; column < columns; column++) {
            int variable = outside[column];
            if (lower[variable] == upper[variable]) {
                continue;
            }
            double along = at[variable] == lower[variable] ? sign * row[column] : -sign * row[column];
            if (along > PIVOT) {
                double ratio = Math.abs(reduced[column]) / along;
                if (ratio < least - TINY || ratio < least + TINY && along > size) {
                    best = column;
                    least = Math.min(least, ratio);
                    size = along;
                }
            }
        }
        return best;
    }

    private void pivot(int row, int column, double to) {
        int leaving = basic[row];
        int entering = outside[column];
        double[] own = coefficients[row];
        double pivot = own[column];
        double change = (basicValue[row] - to) / pivot;
        raised += reduced[column] * change;
        for (int i = 0; i < rows; i++) {
            basicValue[i] -= coefficients[i][column] * change;
        }
        basicValue[row] = at[entering] + change;
        scale(own, pivot);
        own[column] = 1 / pivot;
        for (int i = 0; i < rows; i++) {
            if (i != row && coefficients[i][column] != 0) {
                subtract(coefficients[i], own, column);
            }
        }
        subtract(reduced, own, column);
        basic[row] = entering;
        rowOf[entering] = row;
        columnOf[entering] = -1;
        outside[column] = leaving;
        columnOf[leaving] = column;
        rowOf[leaving] = -1;
        at[leaving] = to;
    }

    private void scale(double[] own, double pivot) {
        filledCount = 0;
        for (int j = 0; j < columns; j++) {
            double value = own[j] / pivot;
            own[j] = Math.abs(value) < TINY ? 0 : value;
            if (own[j] != 0) {
                filled[filledCount++] = j;
            }
        }
    }

    /** Column by column where the row is mostly empty; the plain loop is the faster one elsewhere. */
    private void subtract(double[] from, double[] own, int column) {
        double factor = from[column];
        from[column] = 0;
        if (filledCount * SPARSE < columns) {
            for (int k = 0; k < filledCount; k++) {
                from[filled[k]] -= factor * own[filled[k]];
            }
            return;
        }
        for (int j = 0; j < columns; j++) {
            from[j] -= factor * own[j];
        }
    }
}

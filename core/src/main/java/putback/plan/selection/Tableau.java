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

    /** Rows that are off by less than this share of the most are not measured. */
    private static final double SHARE = 0.3;

    private final double[] lower;
    private final double[] upper;
    private final Basis basis;
    /** For columns: the value of their variable, one of its bounds. */
    private final double[] at;

    private final Grid grid = new Grid();
    private double[] basicValue = new double[32];
    private double raised;
    private int rayRow = -1;
    private int raySign;

    /**
     * @param variables how many there can be at most; they are numbered from 0
     */
    Tableau(int variables) {
        lower = new double[variables];
        upper = new double[variables];
        at = new double[variables];
        basis = new Basis(variables);
    }

    /** A new variable, at its lower bound. */
    void addColumn(int variable, double cost, double from, double to) {
        int column = grid.addColumn(cost);
        basis.addColumn(column, variable);
        lower[variable] = from;
        upper[variable] = to;
        at[variable] = from;
    }

    /** Asks that the sum of some variables less the sum of others is at least so much; the rest is a new variable. */
    void addRow(int rest, int[] plus, int[] minus, double least) {
        int row = grid.addRow();
        if (row == basicValue.length) {
            basicValue = Arrays.copyOf(basicValue, 2 * row);
        }
        basicValue[row] = -least;
        for (int variable : plus) {
            addTo(row, variable, 1);
        }
        for (int variable : minus) {
            addTo(row, variable, -1);
        }
        basis.addRow(row, rest);
        lower[rest] = 0;
        upper[rest] = Double.POSITIVE_INFINITY;
    }

    /** Whether the row of this rest has more than it asks for, so that it says nothing now. */
    boolean hasRoom(int rest) {
        return basis.rowOf(rest) >= 0 && basicValue[basis.rowOf(rest)] > PIVOT;
    }

    /** Takes a row out that has room; nothing else changes. */
    void removeRow(int rest) {
        int row = basis.rowOf(rest);
        int last = grid.rows() - 1;
        basicValue[row] = basicValue[last];
        grid.removeRow(row);
        basis.removeRow(row, last);
        rayRow = -1;
    }

    int rows() {
        return grid.rows();
    }

    private void addTo(int row, int variable, int factor) {
        basicValue[row] += factor * value(variable);
        if (basis.columnOf(variable) >= 0) {
            grid.row(row)[basis.columnOf(variable)] -= factor;
        } else {
            grid.addTo(row, basis.rowOf(variable), factor);
        }
    }

    double value(int variable) {
        return basis.rowOf(variable) >= 0 ? basicValue[basis.rowOf(variable)] : at[variable];
    }

    /** What one more of a variable costs; 0 for one in the basis. */
    double reducedCost(int variable) {
        return basis.columnOf(variable) >= 0 ? grid.cost(basis.columnOf(variable)) : 0;
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
        int column = basis.columnOf(variable);
        if (column >= 0) {
            move(column, grid.cost(column) < 0 ? to : from);
        }
    }

    private void move(int column, double to) {
        double change = to - at[basis.inColumn(column)];
        if (change != 0) {
            shift(column, change);
            at[basis.inColumn(column)] = to;
        }
    }

    /** Moves the variable of a column: what is in the basis follows. */
    private void shift(int column, double change) {
        for (int row = 0; row < grid.rows(); row++) {
            basicValue[row] -= grid.at(row, column) * change;
        }
    }

    /** One step; false when there is none to take, because all is within bounds or nothing can bring it there. */
    boolean step() {
        int row = farthestOff();
        if (row < 0) {
            return false;
        }
        boolean tooSmall = basicValue[row] < lower[basis.inRow(row)];
        int column = entering(grid.row(row), tooSmall ? -1 : 1);
        if (column < 0) {
            return false;
        }
        pivot(row, column, tooSmall ? lower[basis.inRow(row)] : upper[basis.inRow(row)]);
        return true;
    }

    /** Looks for a variable that nothing can bring within its bounds. */
    void findRay() {
        int row = farthestOff();
        rayRow = row;
        raySign = row >= 0 && basicValue[row] < lower[basis.inRow(row)] ? -1 : 1;
        if (row >= 0 && entering(grid.row(row), raySign) >= 0) {
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
        return basis.rowOf(variable) == rayRow
                ? -raySign
                : basis.columnOf(variable) >= 0 ? -raySign * grid.at(rayRow, basis.columnOf(variable)) : 0;
    }

    /** Among the rows that are off by much the one that is off by most for how long it is (steepest edge). */
    private int farthestOff() {
        double much = FEASIBLE;
        for (int row = 0; row < grid.rows(); row++) {
            much = Math.max(much, SHARE * off(row));
        }
        int farthest = -1;
        double most = 0;
        for (int row = 0; row < grid.rows(); row++) {
            double off = off(row);
            double worth = off > much ? off * off / grid.square(row) : 0;
            if (worth > most) {
                most = worth;
                farthest = row;
            }
        }
        return farthest;
    }

    /** How far the variable of a row is outside its bounds; below 0 inside. */
    private double off(int row) {
        int variable = basis.inRow(row);
        return Math.max(lower[variable] - basicValue[row], basicValue[row] - upper[variable]);
    }

    /** The column that keeps all reduced costs right, the one with the larger coefficient among equals. */
    private int entering(double[] row, int sign) {
        int best = -1;
        double least = Double.POSITIVE_INFINITY;
        double size = 0;
        for (int column = 0; column < grid.columns(); column++) {
            int variable = basis.inColumn(column);
            if (lower[variable] == upper[variable]) {
                continue;
            }
            double along = at[variable] == lower[variable] ? sign * row[column] : -sign * row[column];
            if (along > PIVOT) {
                double ratio = Math.abs(grid.cost(column)) / along;
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
        int leaving = basis.inRow(row);
        int entering = basis.inColumn(column);
        double change = (basicValue[row] - to) / grid.at(row, column);
        raised += grid.cost(column) * change;
        shift(column, change);
        basicValue[row] = at[entering] + change;
        grid.pivot(row, column);
        basis.exchange(row, column);
        at[leaving] = to;
    }
}

package putback.plan.selection;

import java.util.Arrays;

/** The numbers of a {@link Tableau}, row by row, with the row of costs apart; columns are only ever added. */
final class Grid {
    private static final double TINY = 1e-11;
    private static final int SPARSE = 3;

    private double[][] rows = new double[32][];
    private int rowCount;
    private double[] cost = new double[32];
    private int columnCount;
    /** Which columns of the row of the last pivot are not 0. */
    private int[] filled = new int[32];

    private int filledCount;

    int rows() {
        return rowCount;
    }

    int columns() {
        return columnCount;
    }

    double[] row(int row) {
        return rows[row];
    }

    double at(int row, int column) {
        return rows[row][column];
    }

    /** One and the sum of the squares in the row. */
    double square(int row) {
        double[] own = rows[row];
        double sum = 1;
        double odd = 0;
        int column = 0;
        for (; column + 1 < columnCount; column += 2) {
            sum += own[column] * own[column];
            odd += own[column + 1] * own[column + 1];
        }
        return column < columnCount ? sum + odd + own[column] * own[column] : sum + odd;
    }

    double cost(int column) {
        return cost[column];
    }

    /** Empty but for its cost. */
    int addColumn(double itsCost) {
        if (columnCount == cost.length) {
            cost = Arrays.copyOf(cost, 2 * columnCount);
            filled = new int[2 * columnCount];
            for (int row = 0; row < rowCount; row++) {
                rows[row] = Arrays.copyOf(rows[row], 2 * columnCount);
            }
        }
        cost[columnCount] = itsCost;
        return columnCount++;
    }

    /** A row of zeros to be filled. */
    int addRow() {
        if (rowCount == rows.length) {
            rows = Arrays.copyOf(rows, 2 * rowCount);
        }
        rows[rowCount] = new double[cost.length];
        return rowCount++;
    }

    /** The last row takes its place. */
    void removeRow(int row) {
        rowCount--;
        rows[row] = rows[rowCount];
    }

    /** Adds a multiple of a row to another. */
    void addTo(int row, int other, int factor) {
        double[] to = rows[row];
        double[] own = rows[other];
        for (int column = 0; column < columnCount; column++) {
            to[column] += factor * own[column];
        }
    }

    /** Changes the variable of the row for that of the column. */
    void pivot(int row, int column) {
        double[] own = rows[row];
        double pivot = own[column];
        scale(own, pivot);
        own[column] = 1 / pivot;
        for (int i = 0; i < rowCount; i++) {
            if (i != row && rows[i][column] != 0) {
                subtract(rows[i], own, column);
            }
        }
        subtract(cost, own, column);
    }

    private void scale(double[] own, double pivot) {
        filledCount = 0;
        for (int j = 0; j < columnCount; j++) {
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
        if (filledCount * SPARSE < columnCount) {
            for (int k = 0; k < filledCount; k++) {
                from[filled[k]] -= factor * own[filled[k]];
            }
            return;
        }
        for (int j = 0; j < columnCount; j++) {
            from[j] -= factor * own[j];
        }
    }
}

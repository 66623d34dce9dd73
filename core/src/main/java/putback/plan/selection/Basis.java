package putback.plan.selection;

import java.util.Arrays;

/** Which variable each row of a {@link Tableau} gives the value of, and which each column stands for. */
final class Basis {
    private final int[] rowOf;
    private final int[] columnOf;
    private int[] inRow = new int[32];
    private int[] inColumn = new int[32];

    /**
     * @param variables how many there can be at most; they are numbered from 0
     */
    Basis(int variables) {
        rowOf = new int[variables];
        columnOf = new int[variables];
        Arrays.fill(rowOf, -1);
        Arrays.fill(columnOf, -1);
    }

    /** Below 0 for a variable that has a column, or is not there. */
    int rowOf(int variable) {
        return rowOf[variable];
    }

    /** Below 0 for a variable that has a row, or is not there. */
    int columnOf(int variable) {
        return columnOf[variable];
    }

    int inRow(int row) {
        return inRow[row];
    }

    int inColumn(int column) {
        return inColumn[column];
    }

    void addRow(int row, int variable) {
        if (row == inRow.length) {
            inRow = Arrays.copyOf(inRow, 2 * row);
        }
        inRow[row] = variable;
        rowOf[variable] = row;
    }

    /** The last row takes the place of the one that goes. */
    void removeRow(int row, int last) {
        rowOf[inRow[row]] = -1;
        if (row != last) {
            inRow[row] = inRow[last];
            rowOf[inRow[row]] = row;
        }
    }

    void addColumn(int column, int variable) {
        if (column == inColumn.length) {
            inColumn = Arrays.copyOf(inColumn, 2 * column);
        }
        inColumn[column] = variable;
        columnOf[variable] = column;
    }

    void exchange(int row, int column) {
        int leaving = inRow[row];
        int entering = inColumn[column];
        inRow[row] = entering;
        rowOf[entering] = row;
        columnOf[entering] = -1;
        inColumn[column] = leaving;
        columnOf[leaving] = column;
        rowOf[leaving] = -1;
    }
}

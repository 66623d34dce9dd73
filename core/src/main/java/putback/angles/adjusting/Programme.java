package putback.angles.adjusting;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ojalgo.optimisation.Expression;
import org.ojalgo.optimisation.ExpressionsBasedModel;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.Variable;
import putback.angles.numbers.LeastSquares;

/**
 * A convex quadratic programme in a few unknowns, some of them whole: rows between limits, a sum of weighted squares and
 * linear terms to be least. The linear ones are solved by a library, those with squares as least squares; whole unknowns by
 * branching over their roundings, which ends, since each is bounded.
 */
final class Programme {
    private static final double WHOLE = 1e-6;
    private static final double CLEARLY_LESS = 1e-9;

    /** A row or bound missed by less is kept. */
    private static final double KEPT = 1e-6;

    private static final int MOST_ROUNDS = 5_000;
    private static final int MOST_BRANCHES = 5_000;

    private final int unknowns;
    private final double[] low;
    private final double[] high;
    private final boolean[] whole;
    private final double[] linear;
    private final List<Row> rows = new ArrayList<>();
    private final List<Square> squares = new ArrayList<>();

    private boolean triedAll = true;

    private record Row(double[] shares, double low, double high) {}

    /** {@code weight * (shares . x + constant)^2}. */
    private record Square(double[] shares, double constant, double weight) {}

    /** Bounds of one branch. */
    private record Branch(double[] low, double[] high) {}

    Programme(int unknowns) {
        this.unknowns = unknowns;
        low = new double[unknowns];
        high = new double[unknowns];
        whole = new boolean[unknowns];
        linear = new double[unknowns];
    }

    void bound(int unknown, double from, double to, boolean isWhole) {
        low[unknown] = isWhole ? Math.ceil(from - WHOLE) : from;
        high[unknown] = isWhole ? Math.floor(to + WHOLE) : to;
        whole[unknown] = isWhole;
    }

    void row(double[] shares, double from, double to) {
        rows.add(new Row(shares, from, to));
    }

    void least(int unknown, double weight) {
        linear[unknown] = weight;
    }

    void leastSquare(double[] shares, double constant, double weight) {
        squares.add(new Square(shares, constant, weight));
    }

    /** The best unknowns; null where no unknowns keep the rows, or none was found before the tries ended. */
    double @Nullable [] best() {
        return best(MOST_BRANCHES);
    }

    /** The same with at most so many tries. */
    double @Nullable [] best(int mostBranches) {
        List<Branch> open = new ArrayList<>(List.of(new Branch(low, high)));
        double[] best = null;
        double least = Double.POSITIVE_INFINITY;
        for (int branches = 0; !open.isEmpty() && branches < mostBranches; branches++) {
            Branch branch = open.remove(open.size() - 1);
            double[] found = relaxed(branch);
            if (found == null || value(found) > least - CLEARLY_LESS) {
                continue;
            }
            int split = split(found);
            if (split < 0) {
                best = found;
                least = value(found);
            } else {
                boolean down = found[split] - Math.floor(found[split]) < 0.5;
                open.add(half(branch, split, found[split], !down));
                open.add(half(branch, split, found[split], down));
            }
        }
        triedAll = open.isEmpty();
        return best;
    }

    /** Whether all roundings were tried or ruled out, so that what was found is the best there is. */
    boolean triedAll() {
        return triedAll;
    }

    private static Branch half(Branch of, int split, double at, boolean down) {
        double[] from = of.low.clone();
        double[] to = of.high.clone();
        if (down) {
            to[split] = Math.floor(at);
        } else {
            from[split] = Math.ceil(at);
        }
        return new Branch(from, to);
    }

    /** The whole unknown farthest from one; -1 where all are whole, which are rounded then. */
    private int split(double[] found) {
        int split = -1;
        double farthest = WHOLE;
        for (int i = 0; i < unknowns; i++) {
            double off = Math.abs(found[i] - Math.rint(found[i]));
            if (whole[i] && off > farthest) {
                farthest = off;
                split = i;
            }
        }
        for (int i = 0; split < 0 && i < unknowns; i++) {
            found[i] = whole[i] ? Math.rint(found[i]) : found[i];
        }
        return split;
    }

    private double value(double[] at) {
        double value = 0;
        for (int i = 0; i < unknowns; i++) {
            value += linear[i] * at[i];
        }
        for (Square square : squares) {
            double sum = square.constant + sum(square.shares, at);
            value += square.weight * sum * sum;
        }
        return value;
    }

    private double @Nullable [] relaxed(Branch branch) {
        for (int i = 0; i < unknowns; i++) {
            if (branch.low[i] > branch.high[i]) {
                return null;
            }
        }
        double[] found = squares.isEmpty() ? linear(branch) : squared(branch);
        for (int i = 0; found != null && i < unknowns; i++) {
            found[i] = Math.min(branch.high[i], Math.max(branch.low[i], found[i]));
        }
        return found == null || !keeps(found) ? null : found;
    }

    private boolean keeps(double[] found) {
        for (Row row : rows) {
            double sum = sum(row.shares, found);
            if (!(sum >= row.low - KEPT && sum <= row.high + KEPT)) {
                return false;
            }
        }
        return true;
    }

    private static double sum(double[] shares, double[] at) {
        double sum = 0;
        for (int i = 0; i < shares.length; i++) {
            sum += shares[i] * at[i];
        }
        return sum;
    }

    /** Least squares with inequalities; every unknown has a square of its own, so there is one best. */
    private double @Nullable [] squared(Branch branch) {
        double[][] misses = new double[Math.max(squares.size(), unknowns)][unknowns + 1];
        for (int i = 0; i < squares.size(); i++) {
            Square square = squares.get(i);
            double root = Math.sqrt(square.weight);
            for (int j = 0; j < unknowns; j++) {
                misses[i][j] = root * square.shares[j];
            }
            misses[i][unknowns] = -root * square.constant;
        }
        List<double[]> above = new ArrayList<>();
        for (Row row : rows) {
            limits(above, row.shares, row.low, row.high);
        }
        for (int i = 0; i < unknowns; i++) {
            double[] alone = new double[unknowns];
            alone[i] = 1;
            limits(above, alone, branch.low[i], branch.high[i]);
        }
        return LeastSquares.bounded(misses, above.toArray(new double[0][]));
    }

    private static void limits(List<double[]> above, double[] shares, double low, double high) {
        for (int sign : new int[] {1, -1}) {
            double limit = sign > 0 ? low : -high;
            boolean moves = false;
            double[] row = new double[shares.length + 1];
            for (int i = 0; i < shares.length; i++) {
                row[i] = sign * shares[i];
                moves |= shares[i] != 0;
            }
            row[shares.length] = limit;
            if (moves && !Double.isInfinite(limit)) {
                above.add(row);
            }
        }
    }

    private double @Nullable [] linear(Branch branch) {
        ExpressionsBasedModel model = new ExpressionsBasedModel();
        model.options.iterations_abort = MOST_ROUNDS;
        List<Variable> variables = new ArrayList<>();
        for (int i = 0; i < unknowns; i++) {
            Variable variable = model.newVariable("x" + i).weight(linear[i]);
            if (!Double.isInfinite(branch.low[i])) {
                variable.lower(branch.low[i]);
            }
            if (!Double.isInfinite(branch.high[i])) {
                variable.upper(branch.high[i]);
            }
            variables.add(variable);
        }
        for (int i = 0; i < rows.size(); i++) {
            Row row = rows.get(i);
            Expression expression = model.newExpression("r" + i);
            for (int j = 0; j < unknowns; j++) {
                if (row.shares[j] != 0) {
                    expression.set(variables.get(j), row.shares[j]);
                }
            }
            limit(expression, row);
        }
        Optimisation.Result result = model.minimise();
        if (!result.getState().isFeasible()) {
            return null;
        }
        double[] found = new double[unknowns];
        for (int i = 0; i < unknowns; i++) {
            found[i] = result.doubleValue(i);
        }
        return found;
    }

    private static void limit(Expression expression, Row row) {
        if (!Double.isInfinite(row.low)) {
            expression.lower(row.low);
        }
        if (!Double.isInfinite(row.high)) {
            expression.upper(row.high);
        }
    }
}

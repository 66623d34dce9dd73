package putback.benchmarks;

import java.util.Locale;
import java.util.Random;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.hipparchus.util.Pair;
import putback.angles.linkage.Corner;
import putback.angles.linkage.Layout;
import putback.angles.linkage.Travel;
import putback.angles.linkage.WheelPosition;
import putback.angles.space.Turn;
import putback.angles.space.Vector;
import putback.quantity.Length;

/**
 * Toe and camber of a strut corner 30 mm up its travel, its points measured with an error of 1 mm each way: our own
 * closing of the linkage, and a general least-squares solver on the same equations and the same draws, each answer
 * compared. Then positions a second along one travel.
 */
public final class CornerDraws {
    private static final double UP_MM = 30;
    private static final double SAME_DEG = 1e-5;
    private static final Vector[] POINTS = {
        new Vector(250, 400, 200),
        new Vector(-250, 450, 200),
        new Vector(0, 900, 200),
        new Vector(-40, 700, 850),
        new Vector(-14, 830, 427.5),
        new Vector(50, 200, 250),
        new Vector(150, 800, 275),
        new Vector(-20, 950, 313.426)
    };
    private static final Vector SPIN = new Vector(0, 150, 5).unit();

    private CornerDraws() {}

    /**
     * @param args how many draws, and how many of them by the general solver too
     */
    public static void main(String[] args) {
        int draws = args.length == 0 ? 100_000 : Integer.parseInt(args[0]);
        int beside = args.length < 2 ? 2_000 : Integer.parseInt(args[1]);
        ours(5_000);
        general(Math.min(500, beside));
        long start = System.nanoTime();
        double[] toe = ours(draws);
        double ours = (System.nanoTime() - start) / 1e3 / draws;
        start = System.nanoTime();
        double[] theirs = general(beside);
        double general = (System.nanoTime() - start) / 1e3 / beside;
        for (int i = 0; i < Math.min(beside, draws); i++) {
            if (!(Math.abs(theirs[i] - toe[i]) < SAME_DEG)) {
                throw new IllegalStateException("draw " + i + ": " + toe[i] + " against " + theirs[i]);
            }
        }
        System.out.printf(
                Locale.ROOT,
                "%d draws: ours %.1f us each (%.2f s in all), general solver %.1f us each over %d; ratio %.1f; toe %s%n",
                draws,
                ours,
                ours * draws / 1e6,
                general,
                beside,
                general / ours,
                spread(toe));
        along();
    }

    private static String spread(double[] values) {
        double mean = 0;
        double square = 0;
        for (double value : values) {
            mean += value / values.length;
        }
        for (double value : values) {
            square += (value - mean) * (value - mean) / values.length;
        }
        return String.format(Locale.ROOT, "%.4f deg, standard deviation %.4f", mean, Math.sqrt(square));
    }

    private static void along() {
        Corner corner = corner(POINTS);
        Travel.Span span = new Travel.Span(-60, 0.1, 1201);
        int count = 0;
        long start = 0;
        for (int round = 0; round < 60; round++) {
            if (round == 20) {
                start = System.nanoTime();
                count = 0;
            }
            count += Travel.of(corner, new Length(0), span).positions().size();
        }
        double seconds = (System.nanoTime() - start) / 1e9;
        System.out.printf(Locale.ROOT, "%.0f positions a second along a travel%n", count / seconds);
    }

    private static Vector[] measured(Random random) {
        Vector[] points = POINTS.clone();
        for (int i = 0; i < points.length; i++) {
            points[i] = points[i].plus(new Vector(random.nextGaussian(), random.nextGaussian(), random.nextGaussian()));
        }
        return points;
    }

    private static Corner corner(Vector[] at) {
        Layout.Arm lower = new Layout.Arm(at[0], at[1], at[2]);
        return new Corner(false, new Layout.Strut(lower, at[3], at[4]), at[5], at[6], at[7], SPIN, 313.6, null, null);
    }

    private static double[] ours(int draws) {
        Random random = new Random(1);
        Travel.Span span = new Travel.Span(UP_MM, 1, 1);
        double[] toe = new double[draws];
        for (int i = 0; i < draws; i++) {
            WheelPosition wheel = Travel.of(corner(measured(random)), new Length(0), span)
                    .positions()
                    .get(0);
            toe[i] = wheel.toeDeg();
        }
        return toe;
    }

    private static double[] general(int draws) {
        Random random = new Random(1);
        double[] toe = new double[draws];
        LevenbergMarquardtOptimizer solver = new LevenbergMarquardtOptimizer();
        for (int i = 0; i < draws; i++) {
            Vector[] at = measured(random);
            RealVector found = solver.optimize(new LeastSquaresBuilder()
                            .model(point -> valueAndSlopes(at, point))
                            .target(new double[6])
                            .start(new double[] {0, 0, UP_MM, 0, 0, 0})
                            .maxEvaluations(200)
                            .maxIterations(200)
                            .build())
                    .getPoint();
            Vector spin = turn(found).of(SPIN);
            toe[i] = Math.toDegrees(Math.atan2(spin.x(), spin.y()));
        }
        return toe;
    }

    private static Turn turn(RealVector unknowns) {
        return Turn.by(new Vector(unknowns.getEntry(3), unknowns.getEntry(4), unknowns.getEntry(5)).times(1 / 300.0));
    }

    private static Pair<RealVector, RealMatrix> valueAndSlopes(Vector[] at, RealVector unknowns) {
        double[] value = misses(at, unknowns);
        RealMatrix slopes = MatrixUtils.createRealMatrix(6, 6);
        for (int column = 0; column < 6; column++) {
            RealVector up = unknowns.copy();
            up.addToEntry(column, 1e-5);
            RealVector down = unknowns.copy();
            down.addToEntry(column, -1e-5);
            double[] above = misses(at, up);
            double[] below = misses(at, down);
            for (int row = 0; row < 6; row++) {
                slopes.setEntry(row, column, (above[row] - below[row]) / 2e-5);
            }
        }
        return new Pair<>(new ArrayRealVector(value, false), slopes);
    }

    /** Three links keep their length, the strut slides through its top, the wheel centre is so high. */
    private static double[] misses(Vector[] at, RealVector unknowns) {
        Turn turn = turn(unknowns);
        Vector centre = at[7].plus(new Vector(unknowns.getEntry(0), unknowns.getEntry(1), unknowns.getEntry(2)));
        Vector ball = centre.plus(turn.of(at[2].minus(at[7])));
        Vector clamp = centre.plus(turn.of(at[4].minus(at[7])));
        Vector rod = centre.plus(turn.of(at[6].minus(at[7])));
        Vector along = at[3].minus(at[4]).unit();
        Vector across = along.square();
        Vector toTop = at[3].minus(clamp);
        return new double[] {
            ball.minus(at[0]).length() - at[2].minus(at[0]).length(),
            ball.minus(at[1]).length() - at[2].minus(at[1]).length(),
            rod.minus(at[5]).length() - at[6].minus(at[5]).length(),
            toTop.dot(turn.of(across)),
            toTop.dot(turn.of(along.cross(across))),
            centre.z() - at[7].z() - UP_MM
        };
    }
}

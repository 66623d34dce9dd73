package putback.angles.linkage;

import java.util.List;
import org.jspecify.annotations.Nullable;
import putback.angles.numbers.Elimination;
import putback.angles.space.Vector;

/**
 * Closes the linkage by Newton's method: five conditions hold the carrier, the wheel centre's height is the sixth, and
 * a wanted camber and toe set the bolt and the rod. Unknowns: shift and turn of the carrier, rod, bolt.
 */
final class Closing {
    static final int UNKNOWNS = 8;
    private static final int ROUNDS = 12;
    private static final double CLOSED_MM = 1e-9;
    private static final double MOST_TURN = 0.2;
    private static final double MOST_SHIFT_MM = 80;

    /** Angles count as if at this arm, so that all rows are of one size. */
    private static final double ARM_MM = 300;

    private final Corner corner;
    private final List<Holder> holders;

    Closing(Corner corner) {
        this.corner = corner;
        this.holders = corner.holders();
    }

    /**
     * The closed linkage near a state; null where there is none near it.
     *
     * @param sign of the determinant in this way of assembly; 0 where it is not known yet
     */
    @Nullable
    State near(State start, Goal goal, int sign) {
        State state = start.withRack(goal.rackMm());
        for (int round = 0; round < ROUNDS; round++) {
            double[] misses = misses(state, goal);
            Elimination slopes = Elimination.of(slopes(state, goal));
            if (slopes.isSingular() || (sign != 0 && slopes.determinantSign() != sign)) {
                return null;
            }
            double[] step = slopes.solve(misses);
            for (int i = 0; i < UNKNOWNS; i++) {
                step[i] = -step[i];
            }
            if (!isSmall(step)) {
                return null;
            }
            state = state.moved(step);
            if (largest(step) < CLOSED_MM && largest(misses) < 1e-6) {
                return state;
            }
        }
        return null;
    }

    private static boolean isSmall(double[] step) {
        double shift = Math.abs(step[0]) + Math.abs(step[1]) + Math.abs(step[2]);
        double turn = Math.abs(step[3]) + Math.abs(step[4]) + Math.abs(step[5]) + Math.abs(step[7]);
        return shift < MOST_SHIFT_MM && turn < MOST_TURN;
    }

    private static double largest(double[] values) {
        double largest = 0;
        for (double value : values) {
            largest = Math.max(largest, Math.abs(value));
        }
        return largest;
    }

    /** Of what holds the carrier, row by row. */
    List<String> names() {
        return holders.stream().map(Holder::name).toList();
    }

    int sign(State state, Goal goal) {
        return Elimination.of(slopes(state, goal)).determinantSign();
    }

    private double[] misses(State state, Goal goal) {
        double[] misses = new double[UNKNOWNS];
        for (int row = 0; row < holders.size(); row++) {
            misses[row] = holders.get(row).miss(state);
        }
        Vector spin = state.turn().of(corner.spinAxis());
        misses[5] = state.centre().z() - corner.wheelCentre().z() - goal.travelMm();
        Double toe = goal.toeRad();
        Double camber = goal.camberRad();
        misses[6] = toe == null ? 0 : ARM_MM * (spin.x() * Math.cos(toe) - spin.y() * Math.sin(toe));
        misses[7] = camber == null ? 0 : ARM_MM * (-spin.z() - Math.sin(camber));
        return misses;
    }

    /** Rows as the misses, columns as the unknowns. */
    double[][] slopes(State state, Goal goal) {
        double[][] slopes = new double[UNKNOWNS][UNKNOWNS];
        for (int row = 0; row < holders.size(); row++) {
            Holder holder = holders.get(row);
            fill(slopes[row], 0, holder.byShift(state), 1);
            fill(slopes[row], 3, holder.byTurn(state), 1);
            slopes[row][6] = holder.byRod(state);
            slopes[row][7] = holder.byBolt(state);
        }
        slopes[5][2] = 1;
        Vector spin = state.turn().of(corner.spinAxis());
        Double toe = goal.toeRad();
        if (toe == null) {
            slopes[6][6] = 1;
        } else {
            Vector across = new Vector(Math.cos(toe), -Math.sin(toe), 0);
            fill(slopes[6], 3, spin.cross(across), ARM_MM);
        }
        if (goal.camberRad() == null) {
            slopes[7][7] = 1;
        } else {
            fill(slopes[7], 3, spin.cross(Vector.UP.times(-1)), ARM_MM);
        }
        return slopes;
    }

    private static void fill(double[] row, int from, Vector values, double factor) {
        row[from] = factor * values.x();
        row[from + 1] = factor * values.y();
        row[from + 2] = factor * values.z();
    }
}

package putback.benchmarks;

import com.google.ortools.Loader;
import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CircuitConstraint;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import putback.proof.SopFile;

/** A sequential ordering problem for CP-SAT: one round through all nodes, with a place for each. */
final class OrderCircuit {
    static {
        Loader.loadNativeLibraries();
    }

    private final SopFile file;
    private final int nodes;
    private final CpModel model = new CpModel();
    private final IntVar[] place;
    private final boolean[][] before;

    OrderCircuit(SopFile file) {
        this.file = file;
        this.nodes = file.size() + 1;
        this.place = new IntVar[nodes];
        this.before = before();
        for (int node = 0; node < nodes; node++) {
            place[node] = model.newIntVar(node == 0 ? 0 : 1, node == 0 ? 0 : nodes - 1, "");
        }
        makeOrder();
        makeRound();
    }

    /** What the solver says after a time. */
    Answer least(double seconds) {
        CpSolver solver = new CpSolver();
        solver.getParameters().setNumWorkers(1).setRandomSeed(1).setMaxTimeInSeconds(seconds);
        CpSolverStatus status = solver.solve(model);
        if (status != CpSolverStatus.OPTIMAL && status != CpSolverStatus.FEASIBLE && status != CpSolverStatus.UNKNOWN) {
            throw new IllegalStateException("the solver says " + status);
        }
        long cost = status == CpSolverStatus.UNKNOWN ? Long.MAX_VALUE : Math.round(solver.objectiveValue());
        return new Answer(cost, Math.round(solver.bestObjectiveBound()));
    }

    /** The cost of the best order, and a cost below which there is none. */
    record Answer(long cost, long bound) {}

    private boolean[][] before() {
        boolean[][] comesBefore = new boolean[nodes][nodes];
        for (int from = 0; from < nodes; from++) {
            for (int to = 1; to < nodes; to++) {
                comesBefore[to][from] = from != to && file.cost(from, to - 1) < 0;
            }
        }
        for (int between = 0; between < nodes; between++) {
            for (int i = 0; i < nodes * nodes; i++) {
                comesBefore[i / nodes][i % nodes] |= comesBefore[i / nodes][between] && comesBefore[between][i % nodes];
            }
        }
        return comesBefore;
    }

    private void makeOrder() {
        for (int first = 0; first < nodes; first++) {
            for (int second = 0; second < nodes; second++) {
                if (before[first][second]) {
                    model.addLessThan(place[first], place[second]);
                }
            }
        }
    }

    private void makeRound() {
        CircuitConstraint round = model.addCircuit();
        LinearExprBuilder cost = LinearExpr.newBuilder();
        for (int from = 0; from < nodes; from++) {
            for (int to = 1; to < nodes; to++) {
                if (from != to && mayFollow(from, to)) {
                    BoolVar follows = model.newBoolVar("");
                    round.addArc(from, to, follows);
                    cost.addTerm(follows, file.cost(from, to - 1));
                    model.addEquality(LinearExpr.affine(place[from], 1, 1), place[to])
                            .onlyEnforceIf(follows);
                }
            }
            if (from > 0) {
                round.addArc(from, 0, model.newBoolVar(""));
            }
        }
        model.minimize(cost);
    }

    private boolean mayFollow(int from, int to) {
        boolean passesOver = before[to][from];
        for (int between = 0; between < nodes; between++) {
            passesOver |= before[from][between] && before[between][to];
        }
        return !passesOver;
    }
}

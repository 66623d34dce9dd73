package putback.plan.oracle;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CircuitConstraint;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;

/** The set-up of the way apart: a round tour through the opened joints, each of which remembers how things stand. */
final class SetupModel {
    private final CpModel model;
    private final BoolVar[] opened;
    private final IntVar[] place;
    private final LinearExprBuilder objective;
    private final Settings settings;
    private final int joints;
    private final int[] values = new int[Settings.KINDS];
    /** By joint, kind and value: how it stands when the joint has been undone; 0 for not set yet. */
    private final BoolVar[][][] stands;

    SetupModel(Rules rules, CpModel model, BoolVar[] opened, IntVar[] place, LinearExprBuilder objective) {
        this.model = model;
        this.opened = opened;
        this.place = place;
        this.objective = objective;
        this.settings = new Settings(rules.assembly());
        this.joints = opened.length;
        this.stands = new BoolVar[joints][Settings.KINDS][];
        for (int j = 0; j < joints; j++) {
            for (int kind = 0; kind < Settings.KINDS; kind++) {
                values[kind] = Math.max(values[kind], 1 + settings.asks(j)[kind]);
            }
        }
    }

    void add() {
        BoolVar[][] changed = new BoolVar[joints][Settings.KINDS];
        for (int j = 0; j < joints; j++) {
            for (int kind = 0; kind < Settings.KINDS; kind++) {
                stands[j][kind] = oneOf(values[kind]);
                changed[j][kind] = model.newBoolVar("");
                objective.addTerm(changed[j][kind], settings.cost(kind));
                int asked = settings.asks(j)[kind];
                if (asked != 0) {
                    model.addEquality(stands[j][kind][asked], 1);
                }
            }
        }
        addTour(changed);
    }

    private BoolVar[] oneOf(int size) {
        BoolVar[] one = new BoolVar[size];
        for (int value = 0; value < size; value++) {
            one[value] = model.newBoolVar("");
        }
        model.addExactlyOne(one);
        return one;
    }

    /** Node 0 is where the tour begins and ends; a joint that stays closed goes round by itself. */
    private void addTour(BoolVar[][] changed) {
        CircuitConstraint tour = model.addCircuit();
        tour.addArc(0, 0, model.newBoolVar(""));
        for (int j = 0; j < joints; j++) {
            tour.addArc(j + 1, j + 1, opened[j].not());
            tour.addArc(j + 1, 0, model.newBoolVar(""));
            BoolVar first = model.newBoolVar("");
            tour.addArc(0, j + 1, first);
            begin(first, j);
            for (int next = 0; next < joints; next++) {
                if (next != j) {
                    BoolVar arc = model.newBoolVar("");
                    tour.addArc(j + 1, next + 1, arc);
                    model.addLessThan(place[j], place[next]).onlyEnforceIf(arc);
                    follow(arc, j, next, changed[next]);
                }
            }
        }
    }

    private void begin(BoolVar first, int joint) {
        for (int kind = 0; kind < Settings.KINDS; kind++) {
            if (settings.asks(joint)[kind] == 0) {
                model.addImplication(first, stands[joint][kind][0]);
            }
        }
    }

    private void follow(BoolVar arc, int joint, int next, BoolVar[] changed) {
        for (int kind = 0; kind < Settings.KINDS; kind++) {
            int asked = settings.asks(next)[kind];
            for (int value = 0; value < values[kind]; value++) {
                BoolVar was = stands[joint][kind][value];
                if (asked == 0) {
                    model.addBoolOr(new Literal[] {arc.not(), was.not(), stands[next][kind][value]});
                } else if (value != 0 && value != asked) {
                    model.addBoolOr(new Literal[] {arc.not(), was.not(), changed[kind]});
                }
            }
        }
    }
}

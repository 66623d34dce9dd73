package putback.plan.oracle;

import com.google.ortools.Loader;
import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import putback.plan.selection.Wanted;
import putback.sheet.Assembly;
import putback.sheet.Joint;
import putback.sheet.Station;

/**
 * Selection and order in one model for a general solver, for assemblies of up to about 12 joints.
 *
 * <p>Each opened joint has a place in the order. A blocker is clear of a joint when a labelling of the parts says so
 * that gives the blocker 1 and what the joint joins 0, and in which no joint that is still closed at that place has both
 * labels: exactly then no chain of closed joints leads from one to the other. Nothing is added later, so that this model
 * and {@link SolverModel} are wrong in different ways if they are.
 */
final class OrderModel {
    static {
        Loader.loadNativeLibraries();
    }

    private final Rules rules;
    private final Duty duty;
    private final CpModel model = new CpModel();
    private final int joints;
    private final BoolVar[] opened;
    private final IntVar[] place;
    /** Whether the first is opened, and before the second, which is opened too. */
    private final BoolVar[][] before;

    private final Map<Integer, BoolVar> moved = new HashMap<>();
    private final LinearExprBuilder objective = LinearExpr.newBuilder();

    OrderModel(Assembly assembly, Wanted wanted) {
        this.rules = new Rules(assembly);
        this.duty = new Duty(rules, wanted);
        this.joints = rules.joints();
        this.opened = new BoolVar[joints];
        this.place = new IntVar[joints];
        this.before = new BoolVar[joints][joints];
        makeVariables();
        makeDuty();
        for (Joint joint : assembly.joints()) {
            makeAccess(joint);
        }
        addWork();
    }

    /** Rule 6 alone, in millionths of a minute; empty when nothing sound fulfils what is wanted. */
    OptionalLong leastWork() {
        return least();
    }

    /** Rule 6 with the set-up of the way apart, in millionths of a minute. */
    OptionalLong leastObjective() {
        new SetupModel(rules, model, opened, place, objective).add();
        return least();
    }

    private OptionalLong least() {
        model.minimize(objective);
        CpSolver solver = new CpSolver();
        solver.getParameters().setNumWorkers(1).setRandomSeed(1).setLinearizationLevel(2);
        CpSolverStatus status = solver.solve(model);
        if (status == CpSolverStatus.INFEASIBLE) {
            return OptionalLong.empty();
        }
        if (status != CpSolverStatus.OPTIMAL) {
            throw new IllegalStateException("the solver says " + status);
        }
        return OptionalLong.of(Math.round(solver.objectiveValue()));
    }

    private BoolVar bool() {
        return model.newBoolVar("");
    }

    private void makeVariables() {
        for (int j = 0; j < joints; j++) {
            opened[j] = bool();
            place[j] = model.newIntVar(0, joints, "");
        }
        for (int a = 0; a < joints; a++) {
            for (int b = 0; b < joints; b++) {
                before[a][b] = bool();
                model.addImplication(before[a][b], opened[a]);
                model.addImplication(before[a][b], opened[b]);
                if (a == b) {
                    model.addEquality(before[a][b], 0);
                } else {
                    model.addLessThan(place[a], place[b]).onlyEnforceIf(before[a][b]);
                }
            }
        }
        for (int a = 0; a < joints; a++) {
            for (int b = 0; b < a; b++) {
                Literal[] one = {opened[a].not(), opened[b].not(), before[a][b], before[b][a]};
                model.addBoolOr(one);
            }
        }
        rules.asidesWorthTrying().forEach(part -> moved.put(part, bool()));
    }

    private void makeDuty() {
        duty.mustOpen.stream().forEach(j -> model.addEquality(opened[j], 1));
        duty.mustStay.stream().forEach(j -> model.addEquality(opened[j], 0));
        for (int j = 0; j < joints; j++) {
            for (int part : rules.joint(j).spoils()) {
                if (!duty.covered.get(part)) {
                    for (int k : rules.jointsOf(part)) {
                        model.addImplication(opened[j], opened[k]);
                    }
                }
            }
        }
    }

    private void makeAccess(Joint joint) {
        int j = joint.index();
        joint.after().forEach(k -> model.addImplication(opened[j], before[k][j]));
        joint.aheadOf().forEach(k -> model.addBoolOr(new Literal[] {opened[j].not(), opened[k].not(), before[j][k]}));
        Map<Integer, BoolVar> clear = new HashMap<>();
        for (List<Integer> clause : joint.behind()) {
            List<Literal> either = new ArrayList<>();
            either.add(opened[j].not());
            clause.forEach(part -> either.add(clear.computeIfAbsent(part, p -> clear(p, joint))));
            model.addBoolOr(either);
        }
        if (joint.entry().station() == Station.BENCH) {
            allOff(joint);
        }
    }

    /** A variable that may be true only if the part is clear of the joint when that is opened. */
    private BoolVar clear(int part, Joint joint) {
        BoolVar clear = bool();
        List<Literal> ways = new ArrayList<>();
        ways.add(clear.not());
        ways.add(apart(part, joint));
        if (moved.containsKey(part)) {
            BoolVar aside = bool();
            model.addImplication(aside, moved.get(part));
            rules.part(part).asideOpens().forEach(k -> model.addImplication(aside, before[k][joint.index()]));
            ways.add(aside);
        }
        model.addBoolOr(ways);
        return clear;
    }

    private BoolVar apart(int part, Joint joint) {
        BoolVar apart = bool();
        BoolVar[] label = labels();
        model.addEquality(label[part], 1).onlyEnforceIf(apart);
        joint.joins().forEach(joined -> model.addEquality(label[joined], 0).onlyEnforceIf(apart));
        for (Joint other : rules.assembly().joints()) {
            List<Integer> conducting = other.joins().stream()
                    .filter(p -> !rules.part(p).isTether()
                            || p == part
                            || joint.joins().contains(p))
                    .toList();
            sameLabel(label, conducting, other.index(), joint.index(), apart);
        }
        return apart;
    }

    private void allOff(Joint joint) {
        BoolVar[] label = labels();
        model.addEquality(label[0], 0);
        joint.joins().forEach(part -> model.addEquality(label[part], 1).onlyEnforceIf(opened[joint.index()]));
        for (Joint other : rules.assembly().joints()) {
            sameLabel(label, other.joins(), other.index(), joint.index(), opened[joint.index()]);
        }
    }

    private BoolVar[] labels() {
        BoolVar[] label = new BoolVar[rules.assembly().parts().size()];
        for (int p = 0; p < label.length; p++) {
            label[p] = bool();
        }
        return label;
    }

    private void sameLabel(BoolVar[] label, List<Integer> parts, int other, int joint, BoolVar when) {
        for (int i = 1; i < parts.size(); i++) {
            model.addEquality(label[parts.get(i - 1)], label[parts.get(i)])
                    .onlyEnforceIf(new Literal[] {before[other][joint].not(), when});
        }
    }

    private void addWork() {
        Map<Integer, BoolVar> followUps = new HashMap<>();
        for (int j = 0; j < joints; j++) {
            objective.addTerm(opened[j], rules.jointCost(j));
            for (int followUp : rules.brings(j)) {
                model.addImplication(opened[j], followUps.computeIfAbsent(followUp, f -> bool()));
            }
        }
        followUps.forEach((followUp, done) -> objective.addTerm(done, rules.followUpCost(followUp)));
        moved.forEach((part, aside) -> objective.addTerm(aside, rules.asideCost(part)));
        addHandling();
    }

    /** A part is not paid for only if it hangs, by a closed joint, on one that is nearer to the body. */
    private void addHandling() {
        int parts = rules.assembly().parts().size();
        BoolVar[] held = labels();
        IntVar[] distance = new IntVar[parts];
        for (int p = 0; p < parts; p++) {
            distance[p] = model.newIntVar(0, parts, "");
        }
        model.addEquality(held[0], 1);
        for (int p = 1; p < parts; p++) {
            List<Literal> by = new ArrayList<>();
            by.add(held[p].not());
            for (int j : rules.jointsOf(p)) {
                for (int nearer : rules.joint(j).joins()) {
                    if (nearer != p && !rules.part(nearer).isTether()) {
                        BoolVar link = bool();
                        model.addImplication(link, opened[j].not());
                        model.addImplication(link, held[nearer]);
                        model.addLessThan(distance[nearer], distance[p]).onlyEnforceIf(link);
                        by.add(link);
                    }
                }
            }
            model.addBoolOr(by);
            objective.add(rules.handling(p));
            objective.addTerm(held[p], -rules.handling(p));
        }
    }
}

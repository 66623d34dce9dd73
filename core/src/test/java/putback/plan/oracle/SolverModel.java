package putback.plan.oracle;

import com.google.ortools.Loader;
import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import putback.plan.selection.Wanted;
import putback.sheet.Assembly;

/**
 * The selection of least work by a general solver, for assemblies of any size.
 *
 * <p>What each item costs and what follows at once from it is in the model from the start; why a choice cannot be opened
 * ({@link StuckCuts}) and which parts it lets go ({@link LooseCuts}) is added when a choice is against it. Every
 * condition holds for every sound choice, so each optimum is a lower bound; the first choice that is against nothing is
 * a sound one whose work is that bound.
 */
public final class SolverModel {
    static {
        Loader.loadNativeLibraries();
    }

    private final Rules rules;
    private final Duty duty;
    private final CpModel model = new CpModel();
    private final List<BoolVar> opened = new ArrayList<>();
    private final Map<Integer, BoolVar> moved = new HashMap<>();
    private final List<BoolVar> loose = new ArrayList<>();
    private final Map<Integer, BoolVar> followUps = new HashMap<>();
    private final BitSet choosable = new BitSet();
    private final BitSet asides = new BitSet();
    private int rounds;

    public SolverModel(Assembly assembly, Wanted wanted) {
        this.rules = new Rules(assembly);
        this.duty = new Duty(rules, wanted);
        choosable.set(0, rules.joints());
        choosable.andNot(duty.mustStay);
        rules.asidesWorthTrying().forEach(asides::set);
        makeVariables();
        makeConsequences();
        minimise();
    }

    /** In millionths of a minute; empty when nothing sound fulfils what is wanted. */
    public OptionalLong leastWork() {
        StuckCuts stuckCuts = new StuckCuts(rules, choosable, asides);
        LooseCuts looseCuts = new LooseCuts(rules);
        while (true) {
            rounds++;
            CpSolver solver = new CpSolver();
            solver.getParameters().setNumWorkers(1).setRandomSeed(1).setLinearizationLevel(2);
            CpSolverStatus status = solver.solve(model);
            if (status == CpSolverStatus.INFEASIBLE) {
                return OptionalLong.empty();
            }
            if (status != CpSolverStatus.OPTIMAL) {
                throw new IllegalStateException("the solver says " + status);
            }
            BitSet joints = chosen(solver, opened);
            BitSet aside = new BitSet();
            moved.forEach((part, variable) -> aside.set(part, solver.booleanValue(variable)));
            List<StuckCuts.Cut> stuck = stuckCuts.of(joints, aside);
            List<LooseCuts.Cut> missed = looseCuts.of(joints, chosen(solver, loose));
            if (stuck.isEmpty() && missed.isEmpty()) {
                return OptionalLong.of(rules.work(joints, aside));
            }
            stuck.forEach(this::add);
            missed.forEach(this::add);
        }
    }

    /** How many times the solver was asked. */
    int rounds() {
        return rounds;
    }

    private static BitSet chosen(CpSolver solver, List<BoolVar> variables) {
        BitSet chosen = new BitSet();
        for (int i = 0; i < variables.size(); i++) {
            chosen.set(i, solver.booleanValue(variables.get(i)));
        }
        return chosen;
    }

    private void makeVariables() {
        for (int j = 0; j < rules.joints(); j++) {
            opened.add(model.newBoolVar("open " + j));
            for (int followUp : rules.brings(j)) {
                followUps.computeIfAbsent(followUp, f -> model.newBoolVar("follow-up " + f));
            }
        }
        for (int p = 0; p < rules.assembly().parts().size(); p++) {
            loose.add(model.newBoolVar("loose " + p));
            if (asides.get(p)) {
                moved.put(p, model.newBoolVar("aside " + p));
            }
        }
    }

    private void makeConsequences() {
        duty.mustOpen.stream().forEach(j -> model.addEquality(opened.get(j), 1));
        duty.mustStay.stream().forEach(j -> model.addEquality(opened.get(j), 0));
        for (int j = 0; j < rules.joints(); j++) {
            BoolVar open = opened.get(j);
            rules.joint(j).after().forEach(before -> model.addImplication(open, opened.get(before)));
            rules.brings(j).forEach(followUp -> model.addImplication(open, followUps.get(followUp)));
            rules.joint(j).spoils().stream()
                    .filter(part -> !duty.covered.get(part))
                    .forEach(part -> rules.jointsOf(part).forEach(k -> model.addImplication(open, opened.get(k))));
        }
        moved.forEach((part, aside) ->
                rules.part(part).asideOpens().forEach(j -> model.addImplication(aside, opened.get(j))));
    }

    private void minimise() {
        LinearExprBuilder work = LinearExpr.newBuilder();
        for (int j = 0; j < rules.joints(); j++) {
            work.addTerm(opened.get(j), rules.jointCost(j));
        }
        for (int p = 1; p < loose.size(); p++) {
            work.addTerm(loose.get(p), rules.handling(p));
        }
        moved.forEach((part, aside) -> work.addTerm(aside, rules.asideCost(part)));
        followUps.forEach((followUp, done) -> work.addTerm(done, rules.followUpCost(followUp)));
        model.minimize(work);
    }

    private void add(StuckCuts.Cut cut) {
        List<Literal> either = new ArrayList<>();
        cut.together().stream().forEach(j -> either.add(opened.get(j).not()));
        cut.joints().stream().forEach(j -> either.add(opened.get(j)));
        cut.asides().stream().forEach(part -> either.add(moved.get(part)));
        model.addBoolOr(either);
    }

    private void add(LooseCuts.Cut cut) {
        for (int part : cut.parts()) {
            List<Literal> either = new ArrayList<>();
            either.add(loose.get(part));
            cut.around().stream().forEach(j -> either.add(opened.get(j).not()));
            model.addBoolOr(either);
        }
    }
}

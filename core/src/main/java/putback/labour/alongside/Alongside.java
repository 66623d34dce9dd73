package putback.labour.alongside;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import putback.plan.Plan;
import putback.plan.PlanCost;
import putback.plan.Planner;
import putback.plan.selection.Target;
import putback.plan.selection.Wanted;
import putback.plan.steps.Renewal;
import putback.quantity.Minutes;
import putback.quantity.Parsed;
import putback.sheet.Assembly;
import putback.sheet.Part;
import putback.sheet.Unit;

/** What else is cheap to renew while a plan has the car apart: marginal time against time alone, neighbour by neighbour. */
public final class Alongside {
    private final Plan plan;
    private final Assembly assembly;
    private final Renewal renewal;

    private Alongside(Plan plan) {
        this.plan = plan;
        this.assembly = plan.assembly();
        this.renewal = Renewal.of(assembly, plan.wanted(), plan.selection());
    }

    /**
     * Every part and unit of which nothing is renewed yet and that shares work with the plan; what saves most first, of
     * equal ones by id. What cannot be renewed at all is left out.
     */
    public static List<Neighbour> of(Plan plan) {
        return new Alongside(plan).neighbours();
    }

    private List<Neighbour> neighbours() {
        List<Neighbour> neighbours = new ArrayList<>();
        for (Target target : candidates()) {
            if (cost(List.of(target)) instanceof Parsed.Value<PlanCost> alone
                    && cost(withPlan(target)) instanceof Parsed.Value<PlanCost> both) {
                Neighbour one = neighbour(target, alone.value(), both.value());
                if (one.saved().compareTo(Minutes.ZERO) > 0) {
                    neighbours.add(one);
                }
            }
        }
        neighbours.sort(Comparator.comparing(Neighbour::saved).reversed().thenComparing(one -> one.target()
                .id()));
        return List.copyOf(neighbours);
    }

    private Neighbour neighbour(Target target, PlanCost alone, PlanCost both) {
        return new Neighbour(
                target,
                both.objective().minus(plan.objective()),
                alone.objective(),
                plan.proof().proven() && alone.proven() && both.proven());
    }

    private Parsed<PlanCost> cost(List<Target> targets) {
        return Planner.cost(assembly, new Wanted(targets));
    }

    private List<Target> withPlan(Target target) {
        List<Target> targets = new ArrayList<>(plan.wanted().targets());
        targets.add(target);
        return targets;
    }

    private List<Target> candidates() {
        List<Target> candidates = new ArrayList<>();
        for (Part part : assembly.parts()) {
            if (!part.isBody() && !renewal.renews(part.index())) {
                candidates.add(new Target.OfPart(part));
            }
        }
        for (Unit unit : assembly.units()) {
            boolean touched = false;
            for (int part : unit.parts()) {
                touched |= renewal.renews(part);
            }
            if (!touched) {
                candidates.add(new Target.OfUnit(unit));
            }
        }
        return candidates;
    }
}

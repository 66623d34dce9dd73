package putback.labour.alongside;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import putback.plan.Advice;
import putback.plan.Bond;
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
    private final Function<Wanted, Parsed<PlanCost>> costs;
    private final Assembly assembly;
    private final Renewal renewal;
    private final Map<String, Bond> bonds;

    private Alongside(Plan plan, Function<Wanted, Parsed<PlanCost>> costs) {
        this.plan = plan;
        this.costs = costs;
        this.assembly = plan.assembly();
        this.renewal = Renewal.of(assembly, plan.wanted(), plan.selection());
        this.bonds = Advice.bonds(assembly, plan.wanted(), plan.selection());
    }

    /**
     * Every part and unit of which nothing is renewed yet and that shares work with the plan, and whatever usually goes
     * with what is renewed, shared work or not; what saves most first, of equal ones by id. What cannot be renewed at all
     * is left out.
     */
    public static List<Neighbour> of(Plan plan) {
        return of(plan, wanted -> Planner.cost(plan.assembly(), wanted));
    }

    /**
     * The same, for one that asks again and again and remembers what was worked out before.
     *
     * @param costs of a renewal on the plan's car, as {@link Planner#cost} gives them; asked from several threads
     */
    public static List<Neighbour> of(Plan plan, Function<Wanted, Parsed<PlanCost>> costs) {
        return new Alongside(plan, costs).neighbours();
    }

    /** All plans are worked out side by side: one large part alone takes as long as all small ones. */
    private List<Neighbour> neighbours() {
        List<Target> candidates = candidates();
        List<Wanted> wanted = new ArrayList<>();
        for (Target target : candidates) {
            wanted.add(new Wanted(List.of(target)));
        }
        for (Target target : candidates) {
            wanted.add(new Wanted(withPlan(target)));
        }
        List<Parsed<PlanCost>> answers = wanted.parallelStream().map(costs).toList();
        List<Neighbour> neighbours = new ArrayList<>();
        for (int i = 0; i < candidates.size(); i++) {
            if (answers.get(i) instanceof Parsed.Value<PlanCost> alone
                    && answers.get(candidates.size() + i) instanceof Parsed.Value<PlanCost> both) {
                Neighbour one = neighbour(candidates.get(i), alone.value(), both.value());
                if (one.bond() != null || one.saved().compareTo(Minutes.ZERO) > 0) {
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
                both.total().minus(plan.total()),
                bonds.get(target.id()),
                isBought(target),
                plan.proof().proven() && alone.proven() && both.proven());
    }

    /** Whether the plan renews the same on the other side, and one axle set covers both. */
    private boolean isBought(Target target) {
        if (target instanceof Target.OfUnit one) {
            return one.unit().entry().soldAsAxleSet()
                    && renewal.units().stream()
                            .anyMatch(unit ->
                                    unit.entry().id().equals(one.unit().entry().id()));
        }
        Part part = ((Target.OfPart) target).part();
        return part.entry().soldAsAxleSet()
                && renewal.parts().stream()
                        .anyMatch(
                                other -> other.entry().id().equals(part.entry().id()));
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
            if (!touched || bonds.containsKey(unit.id())) {
                candidates.add(new Target.OfUnit(unit));
            }
        }
        return candidates;
    }
}

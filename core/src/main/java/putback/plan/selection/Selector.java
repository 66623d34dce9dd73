package putback.plan.selection;

import putback.plan.access.Network;
import putback.sheet.Assembly;

/** Chooses which joints to open. */
public final class Selector {
    private Selector() {}

    /** The selection of least work among those with a sound order, proven; among equal ones, the fewest joints. */
    public static Selected least(Assembly assembly, Wanted wanted) {
        Demand demand = Demand.of(Network.of(assembly), wanted);
        Choice choice = new LeastWork(demand, Effort.unlimited())
                .least(Within.anything(), CoverSolver.NO_LIMIT)
                .choice();
        return choice == null
                ? new Selected.Locked(Deadlock.in(demand))
                : new Selected.Sound(Selections.of(demand, choice.joints(), choice.asides()));
    }
}

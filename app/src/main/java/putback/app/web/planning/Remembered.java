package putback.app.web.planning;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import putback.plan.PlanCost;
import putback.plan.Planner;
import putback.plan.selection.Target;
import putback.plan.selection.Wanted;
import putback.quantity.Parsed;
import putback.sheet.Assembly;
import putback.store.sheets.SheetReader;

/** What renewals cost on the stock sheets, which do not change while the program runs. */
final class Remembered {
    private static final int MOST = 20_000;

    private final Map<String, Parsed<PlanCost>> costs = new ConcurrentHashMap<>();

    Parsed<PlanCost> cost(Assembly assembly, Wanted wanted) {
        if (!SheetReader.stockIds().contains(assembly.sheet().id())) {
            return Planner.cost(assembly, wanted);
        }
        List<String> ids = new ArrayList<>();
        for (Target target : wanted.targets()) {
            ids.add(target.id());
        }
        ids.sort(null);
        String key = assembly.sheet().id() + " " + String.join(" ", ids);
        Parsed<PlanCost> known = costs.get(key);
        if (known != null) {
            return known;
        }
        if (costs.size() >= MOST) {
            costs.clear();
        }
        Parsed<PlanCost> cost = Planner.cost(assembly, wanted);
        costs.put(key, cost);
        return cost;
    }
}

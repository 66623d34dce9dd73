package putback.proof;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import putback.plan.order.Order;
import putback.plan.order.Ordering;

/** Orders of TSPLIB against the optima of its list. */
final class OrderingCases {
    private static final String TSPLIB = "TSPLIB, sequential ordering problems (Reinelt 1991)";
    private static final String BEST = "least cost of an order";
    private static final int STATES = 50_000;
    private static final int FEW_STATES = 1_000;

    private OrderingCases() {}

    static void add(List<Case> cases) {
        optima().forEach((name, published) -> {
            Order order = order(name, STATES);
            cases.add(of(name, "", BEST, published, order.cost(), 0, "whole numbers, no rounding", false));
            cases.add(of(
                    name,
                    "-bound",
                    "cost below which no order is",
                    published,
                    order.bound(),
                    0,
                    "whole numbers, no rounding; the search ends with a proof",
                    false));
        });
        unproven(cases);
    }

    /** The proven ones, by name of the file. */
    static Map<String, Long> optima() {
        Map<String, Long> optima = new LinkedHashMap<>();
        optima.put("ESC07", 2125L);
        optima.put("ESC12", 1675L);
        optima.put("ESC25", 1681L);
        optima.put("ESC47", 1288L);
        optima.put("br17.10", 55L);
        return optima;
    }

    private static void unproven(List<Case> cases) {
        Order crane = order("rbg048a", FEW_STATES);
        cases.add(of(
                "rbg048a", "", BEST, 351, crane.cost(), 0, "whole numbers, no rounding; reached, not proven", false));
        cases.add(of(
                "rbg048a",
                "-bound",
                "cost below which no order is",
                351,
                crane.bound(),
                18,
                "the search stops after 1000 states without a proof: a bound within 5 % below the optimum",
                false));
        cases.add(of(
                "p43.1",
                "",
                BEST,
                27_990,
                order("p43.1", FEW_STATES).cost(),
                0,
                "the list is wrong for this file: a general solver, outside this program, proves that no order costs less than "
                        + "28080; ours is the best order found in 1000 states, not proven",
                true));
    }

    private static Order order(String name, int states) {
        return Ordering.least(SopFile.published(name), states);
    }

    private static Case of(
            String name,
            String suffix,
            String quantity,
            long published,
            long ours,
            long allowed,
            String because,
            boolean known) {
        return new Case(
                PlanningCases.ROOM,
                "sop-" + name + suffix,
                TSPLIB,
                "file " + name + ".sop, optimum of the TSPLIB list",
                quantity,
                BigDecimal.valueOf(published),
                BigDecimal.valueOf(ours),
                BigDecimal.valueOf(allowed),
                because,
                known);
    }
}

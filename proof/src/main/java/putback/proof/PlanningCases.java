package putback.proof;

import java.util.ArrayList;
import java.util.List;
import putback.quantity.Minutes;
import putback.sheet.Setups;

/** Instances of planning with known optimum. */
final class PlanningCases {
    static final String ROOM = "plan";
    private static final Setups NONE = new Setups(Minutes.ZERO, Minutes.ZERO, Minutes.ZERO, Minutes.ZERO);

    private PlanningCases() {}

    static List<Case> all() {
        List<Case> cases = new ArrayList<>();
        OrderingCases.add(cases);
        for (String name : List.of("P10", "P10r", "P22", "P47")) {
            SelectionCases.add(cases, name, NONE);
        }
        for (String name : List.of("syn-973", "syn-194")) {
            TogetherCases.add(cases, name);
        }
        StaplerCases.add(cases);
        return cases;
    }
}

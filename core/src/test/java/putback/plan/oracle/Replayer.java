package putback.plan.oracle;

import java.util.ArrayList;
import java.util.List;
import putback.plan.Plan;
import putback.plan.steps.Step;

/** Replays a plan step by step, by the rules of the design, and says all that is wrong with it. */
public final class Replayer {
    private Replayer() {}

    /** Empty when the plan is sound. */
    public static List<String> complaints(Plan plan) {
        Scene scene = new Scene(plan);
        List<Check> checks = List.of(
                new MoveCheck(scene),
                new AccessCheck(scene),
                new HeightCheck(scene),
                new CountCheck(scene),
                new AidCheck(scene),
                new HangingCheck(scene),
                new GroupCheck(scene),
                new RenewCheck(scene),
                new WordCheck(scene),
                new FigureCheck(scene));
        for (Step step : plan.steps()) {
            checks.forEach(check -> check.before(step));
            scene.apply(step);
        }
        checks.forEach(Check::end);
        List<String> complaints = new ArrayList<>();
        checks.forEach(check -> complaints.addAll(check.complaints()));
        return complaints;
    }
}

package putback.labour.price;

import java.util.LinkedHashMap;
import java.util.Map;
import putback.labour.time.Lognormal;
import putback.plan.Plan;
import putback.plan.steps.Step;
import putback.quantity.Minutes;
import putback.sheet.Joint;

/** What a plan assumes of a joint: opening it, and closing it with start, run-down and tightening as one. */
record JointTimes(Lognormal open, Lognormal close) {
    /** Of every joint that the plan opens, in the order of its steps. */
    static Map<Joint, JointTimes> of(Plan plan) {
        Map<Joint, Minutes> open = new LinkedHashMap<>();
        Map<Joint, Minutes> close = new LinkedHashMap<>();
        for (Step step : plan.steps()) {
            Joint joint = step.joint();
            if (joint != null) {
                switch (step.act()) {
                    case UNDO, BREAK_LOOSE -> open.merge(joint, step.minutes(), Minutes::plus);
                    case START, RUN_DOWN, TIGHTEN -> close.merge(joint, step.minutes(), Minutes::plus);
                    default -> {}
                }
            }
        }
        Map<Joint, JointTimes> times = new LinkedHashMap<>();
        open.forEach((joint, minutes) -> times.put(
                joint,
                new JointTimes(lognormal(joint, minutes), lognormal(joint, close.getOrDefault(joint, Minutes.ZERO)))));
        return times;
    }

    private static Lognormal lognormal(Joint joint, Minutes minutes) {
        return new Lognormal(minutes.decimal().doubleValue(), joint.entry().spread());
    }
}

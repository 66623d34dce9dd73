package putback.labour.price;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import putback.labour.time.JobTime;
import putback.labour.time.Lognormal;
import putback.labour.time.Seizure;
import putback.labour.time.Share;
import putback.labour.time.StepTime;
import putback.plan.Plan;
import putback.plan.steps.Step;
import putback.quantity.Minutes;
import putback.quantity.Parsed;
import putback.sheet.Joint;

/**
 * The time of a plan as a distribution. A plan's minutes are medians. A joint has two draws, one for opening it and one
 * for closing it, which its start, run-down and tightening share. Every set-up, part and follow-up is a draw of its own.
 */
final class PlanTime {
    /** What is no joint; a capital letter keeps it apart from every id. */
    static final String SETUP = "Set-up";

    static final String OTHER = "Parts, aids and follow-ups";

    private final Plan plan;
    private final List<StepTime> steps = new ArrayList<>();

    private PlanTime(Plan plan) {
        this.plan = plan;
    }

    /** Or what cannot be reckoned with, such as too wide a spread. */
    static Parsed<JobTime> of(Plan plan, OwnFigures own, List<Stuck> stuck) {
        PlanTime time = new PlanTime(plan);
        time.joints(own);
        time.rest();
        for (Stuck one : stuck) {
            Seizure seizure = one.seizure();
            for (int i = 0; i < one.count(); i++) {
                time.steps.add(new StepTime(one.joint().id(), new Lognormal(0, 0), seizure));
            }
        }
        return JobTime.of(time.steps, plan.assembly().sheet().times().common());
    }

    private void joints(OwnFigures own) {
        JointTimes.of(plan).forEach((joint, times) -> {
            add(joint, own.time(joint, true, times.open()));
            add(joint, own.time(joint, false, times.close()));
        });
    }

    private void rest() {
        for (Step step : plan.steps()) {
            boolean ofJoint =
                    switch (step.act()) {
                        case UNDO, BREAK_LOOSE, START, RUN_DOWN, TIGHTEN -> true;
                        default -> false;
                    };
            if (step.joint() == null || !ofJoint) {
                add(OTHER, step.minutes());
            }
            add(SETUP, step.setup());
        }
    }

    private void add(Joint joint, Lognormal time) {
        if (time.medianMinutes() > 0) {
            steps.add(new StepTime(joint.id(), time, Seizure.NONE));
        }
    }

    private void add(String what, Minutes minutes) {
        if (!minutes.isZero()) {
            double spread = plan.assembly().sheet().times().spread();
            steps.add(StepTime.of(what, minutes.decimal().doubleValue(), spread));
        }
    }

    /** Shares of the variance with what has the same id taken together, largest first, of equal ones in order. */
    static List<Share> risk(JobTime time) {
        Map<String, Double> sums = new LinkedHashMap<>();
        for (Share one : time.risk()) {
            sums.merge(one.id(), one.share(), Double::sum);
        }
        List<Share> risk = new ArrayList<>();
        sums.forEach((id, share) -> risk.add(new Share(id, share)));
        risk.sort((a, b) -> Double.compare(b.share(), a.share()));
        return List.copyOf(risk);
    }

    static boolean isJoint(Share share) {
        return !share.id().isEmpty() && !share.id().equals(SETUP) && !share.id().equals(OTHER);
    }
}

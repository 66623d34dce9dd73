package putback.app.web;

import java.util.List;
import org.jspecify.annotations.Nullable;
import putback.app.papers.Reading;
import putback.plan.Plan;
import putback.plan.steps.Step;
import putback.sheet.Joint;

/** What the ledgers say of jobs. */
interface Ledgers {
    /** What is still owed, in words; what is carried with a reason is not among it. */
    List<String> owes(JobFile file, @Nullable Plan plan);

    /** Whether anything has come apart. */
    boolean started(JobFile file);

    /** Whether the plan takes a wheel off. */
    static boolean wheelComesOff(Plan plan) {
        for (Step step : plan.steps()) {
            Joint joint = step.joint();
            if (joint != null && (joint.id().contains("wheel-nut") || joint.id().contains("wheel-bolt"))) {
                return true;
            }
        }
        return false;
    }

    /** What was read at tightenings. */
    List<Reading> readings(JobFile file);

    /** What stays open on purpose, by whom and why. */
    List<String> carried(JobFile file, Plan plan);
}

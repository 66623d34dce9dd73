package putback.app.web;

import java.util.List;
import org.jspecify.annotations.Nullable;
import putback.plan.Plan;

/** What the ledgers say of jobs. */
interface Ledgers {
    /** What is still owed, in words; what is carried with a reason is not among it. */
    List<String> owes(JobFile file, @Nullable Plan plan);

    /** Whether anything has come apart. */
    boolean started(JobFile file);

    /** Whether a wheel was off. */
    boolean wheelWasOff(JobFile file);
}

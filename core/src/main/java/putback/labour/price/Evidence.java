package putback.labour.price;

import java.util.ArrayList;
import java.util.List;
import putback.labour.seized.Attempt;
import putback.labour.seized.RustGrade;
import putback.labour.time.Lognormal;
import putback.plan.Plan;
import putback.sheet.Joint;

/**
 * A figure of an estimate in which the garage's own cases count.
 *
 * @param id of a joint or a resort
 * @param name as a person says it
 * @param what it is
 * @param assumed what would stand there without them: minutes, or a chance
 * @param used what stands there
 * @param seen how many cases of the garage's own
 * @param believed how many the assumption counts like
 */
public record Evidence(String id, String name, What what, double assumed, double used, int seen, double believed) {
    /** What a figure is of. */
    public enum What {
        OPENING("opening", true),
        CLOSING("closing", true),
        SEIZED("seized", false),
        WORKS("works", false),
        TAKES("takes", true);

        private final String word;
        private final boolean isTime;

        What(String word, boolean isTime) {
            this.word = word;
            this.isTime = isTime;
        }

        public String word() {
            return word;
        }

        /** Minutes, or else a chance. */
        public boolean isTime() {
            return isTime;
        }
    }

    /** Of all joints of a plan in order, then of the resorts that may be tried. */
    static List<Evidence> of(Plan plan, Beliefs beliefs, List<Stuck> stuck) {
        List<Evidence> all = new ArrayList<>();
        OwnFigures own = beliefs.own();
        JointTimes.of(plan).forEach((joint, times) -> {
            addTime(all, joint, true, times.open(), own);
            addTime(all, joint, false, times.close(), own);
            RustGrade grade = beliefs.rust().at(joint);
            OwnFigures.Count count = own.seized(joint, grade);
            if (count.of() > 0 && RustGrade.canSeize(joint)) {
                double assumed = grade.seizedEach(joint);
                double used = own.seizedEach(joint, grade, assumed);
                all.add(new Evidence(
                        joint.id(), joint.name(), What.SEIZED, assumed, used, count.of(), OwnFigures.CASES_ASSUMED));
            }
        });
        if (!stuck.isEmpty()) {
            addResorts(all, plan, own);
        }
        return List.copyOf(all);
    }

    private static void addTime(List<Evidence> all, Joint joint, boolean opening, Lognormal assumed, OwnFigures own) {
        int timed = own.timed(joint, opening);
        if (timed > 0 && assumed.medianMinutes() > 0) {
            double used = own.time(joint, opening, assumed).medianMinutes();
            What what = opening ? What.OPENING : What.CLOSING;
            all.add(new Evidence(
                    joint.id(), joint.name(), what, assumed.medianMinutes(), used, timed, OwnFigures.TIMES_ASSUMED));
        }
    }

    private static void addResorts(List<Evidence> all, Plan plan, OwnFigures own) {
        for (Attempt assumed :
                JointResorts.assumed(plan.assembly().sheet().resorts()).values()) {
            String id = assumed.id();
            OwnFigures.Count count = own.tried(id);
            Attempt used = own.tried(assumed);
            if (count.of() > 0) {
                double before = assumed.chance().doubleValue();
                double after = used.chance().doubleValue();
                all.add(new Evidence(id, id, What.WORKS, before, after, count.of(), OwnFigures.CASES_ASSUMED));
            }
            if (own.timedResort(id) > 0) {
                double before = assumed.minutes().decimal().doubleValue();
                double after = used.minutes().decimal().doubleValue();
                all.add(new Evidence(id, id, What.TAKES, before, after, own.timedResort(id), OwnFigures.TIMES_ASSUMED));
            }
        }
    }
}

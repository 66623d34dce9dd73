package putback.labour.time;

/**
 * How long one step takes; independent of the others, but for what the whole car adds.
 *
 * @param id of the joint, for saying what drives the risk
 */
public record StepTime(String id, Lognormal time, Seizure seizure) {
    public static StepTime of(String id, double medianMinutes, double spread) {
        return new StepTime(id, new Lognormal(medianMinutes, spread), Seizure.NONE);
    }

    /** Minutes. */
    public double mean() {
        return time.mean() + seizure.mean();
    }

    double variance() {
        return time.variance() + seizure.variance();
    }

    /** Minutes beyond which next to nothing lies. */
    double longest() {
        double longest = time.longest();
        for (Seizure.Outcome one : seizure.outcomes()) {
            longest = Math.max(longest, one.extra().longest());
        }
        return longest;
    }

    boolean isFixed() {
        return time.isFixed() && !seizure.isPossible();
    }

    /** What is wrong with it; nothing for a step that can be reckoned with. */
    String wrong() {
        String wrong = wrong(time);
        if (!wrong.isEmpty()) {
            return wrong;
        }
        if (!(seizure.chance() >= 0 && seizure.chance() <= 1)) {
            return "is seized with a chance of " + seizure.chance() + "; it has to be from 0 to 1";
        }
        double sum = 0;
        for (Seizure.Outcome one : seizure.outcomes()) {
            wrong = wrong(one.extra());
            if (!wrong.isEmpty() || !(one.chance() >= 0)) {
                return wrong.isEmpty() ? "has an outcome with a chance below 0" : wrong;
            }
            sum += one.chance();
        }
        return seizure.outcomes().isEmpty() || Math.abs(sum - 1) < 1e-9
                ? ""
                : "has outcomes whose chances are " + sum + " together; they have to be 1";
    }

    private static String wrong(Lognormal time) {
        if (!(time.medianMinutes() >= 0 && time.medianMinutes() <= JobTime.LONGEST)) {
            return "takes " + time.medianMinutes() + " minutes; it has to be from 0 to " + JobTime.LONGEST;
        }
        return time.spread() >= 0 && time.spread() <= JobTime.WIDEST
                ? ""
                : "has a spread of " + time.spread() + "; it has to be from 0 to " + JobTime.WIDEST
                        + " (at 1.5 one in six takes more than four times its usual time)";
    }
}

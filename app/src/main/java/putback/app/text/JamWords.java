package putback.app.text;

import putback.labour.price.Estimate;

/**
 * How an estimate speaks of jobs that end at a fixing which nothing moves, and of its figures in their presence. Minutes,
 * odds, curve and ceiling count such a job as if its last try had worked: more than it takes until one stops there, and
 * without what it takes beyond.
 */
public final class JamWords {
    /** As {@link #counted} says it, for other programs. */
    public static final String COUNTED_AS = "as if the last try had worked";

    private JamWords() {}

    /** How many jobs in a hundred end so; empty where none can. */
    public static String headline(Estimate estimate) {
        double chance = estimate.chanceBeatsAll();
        if (chance <= 0) {
            return "";
        }
        long inHundred = Math.round(100 * chance);
        String jobs = inHundred < 1
                ? "Fewer than 1 job in 100 ends"
                : inHundred == 1
                        ? "1 job in 100 ends"
                        : inHundred > 99 ? "More than 99 jobs in 100 end" : inHundred + " jobs in 100 end";
        return jobs + " at a fixing that will not move whatever is tried: stop there and ask.";
    }

    /** What the figures make of them; empty where there are none. */
    public static String counted(Estimate estimate) {
        return estimate.chanceBeatsAll() <= 0
                ? ""
                : "Every figure here, the odds of passing a ceiling too, counts such a job " + COUNTED_AS
                        + "; what it takes from there comes on top.";
    }

    /** What the time is that four jobs in five keep to. */
    public static String fourInFive(Estimate estimate) {
        return estimate.chanceBeatsAll() > 0
                ? "4 jobs in 5 are done, or stopped to ask, within"
                : "4 jobs in 5 take no more than";
    }
}

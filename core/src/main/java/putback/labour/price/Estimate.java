package putback.labour.price;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import putback.labour.share.Shares;
import putback.labour.time.JobTime;
import putback.labour.time.Share;
import putback.plan.PartNeed;

/**
 * What a job takes and costs, and how sure that is.
 *
 * @param jobs in the order asked for
 * @param time as a distribution
 * @param likely as often shorter as longer; the invoice is made for it
 * @param fourInFive not exceeded four times in five
 * @param stopAndCall exceeded once in twenty, or where the ceiling is reached: time to stop and call before
 * @param risk what the scatter comes from, largest first
 * @param shares of the least work of all jobs together; null for a single job
 * @param amounts what each of several jobs costs; null for a single job
 * @param unpriced needed, and in no line since nobody gave a price
 * @param chanceOverCeiling null where no ceiling was named
 * @param minutesToCeiling whole minutes of work up to which the total stays within the ceiling, below 0 where the
 *     parts alone are above it; null where no ceiling was named
 * @param expectedDamage of fasteners and pieces that break or are scrapped, on average; in no line
 * @param chanceBeatsAll that something is seized and beats every resort
 * @param evidence figures in which the garage's own cases count; all others are assumptions
 * @param notes what a person should know about these figures
 */
public record Estimate(
        List<Job> jobs,
        JobTime time,
        Figure likely,
        Figure fourInFive,
        Stop stopAndCall,
        List<Share> risk,
        Soak soak,
        List<Spare> shelf,
        @Nullable Shares shares,
        @Nullable Amounts amounts,
        Invoice invoice,
        List<PartNeed> unpriced,
        @Nullable Double chanceOverCeiling,
        @Nullable Long minutesToCeiling,
        double expectedDamage,
        double chanceBeatsAll,
        List<Evidence> evidence,
        List<String> notes) {
    private static final double WORTH_NAMING = 0.01;

    public Estimate {
        jobs = List.copyOf(jobs);
        risk = List.copyOf(risk);
        shelf = List.copyOf(shelf);
        unpriced = List.copyOf(unpriced);
        evidence = List.copyOf(evidence);
        notes = List.copyOf(notes);
    }

    /** The same with more that a person should know. */
    public Estimate withNotes(List<String> more) {
        List<String> all = new ArrayList<>(notes);
        all.addAll(more);
        return new Estimate(
                jobs,
                time,
                likely,
                fourInFive,
                stopAndCall,
                risk,
                soak,
                shelf,
                shares,
                amounts,
                invoice,
                unpriced,
                chanceOverCeiling,
                minutesToCeiling,
                expectedDamage,
                chanceBeatsAll,
                evidence,
                all);
    }

    /**
     * Where the scatter comes from, in percent that make 100.
     *
     * @param most lines before the one for the rest
     */
    public List<Risk> riskLines(int most) {
        return Risk.lines(risk, most, WORTH_NAMING);
    }

    /** Whether a share is of a joint, and not of set-ups, parts or the whole car. */
    public static boolean isJoint(Share share) {
        return PlanTime.isJoint(share);
    }
}

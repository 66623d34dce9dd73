package putback.labour.price;

import java.util.List;
import org.jspecify.annotations.Nullable;
import putback.labour.share.Shares;
import putback.labour.time.JobTime;
import putback.labour.time.Share;

/**
 * What a job takes and costs, and how sure that is.
 *
 * @param jobs in the order asked for
 * @param time as a distribution
 * @param likely as often shorter as longer; the invoice is made for it
 * @param fourInFive not exceeded four times in five
 * @param stopAndCall exceeded once in twenty: time to stop and call before it is reached
 * @param risk what the scatter comes from, largest first
 * @param shares of the least work of all jobs together; null for a single job
 * @param chanceOverCeiling null where no ceiling was named
 * @param minutesToCeiling whole minutes of work up to which the total stays within the ceiling, below 0 where the
 *     parts alone are above it; null where no ceiling was named
 * @param expectedDamage of fasteners and pieces that break or are scrapped, on average; in no line
 * @param chanceBeatsAll that something is seized and beats every resort
 * @param notes what a person should know about these figures
 */
public record Estimate(
        List<Job> jobs,
        JobTime time,
        Figure likely,
        Figure fourInFive,
        Figure stopAndCall,
        List<Share> risk,
        Soak soak,
        List<Spare> shelf,
        @Nullable Shares shares,
        Invoice invoice,
        @Nullable Double chanceOverCeiling,
        @Nullable Long minutesToCeiling,
        double expectedDamage,
        double chanceBeatsAll,
        List<String> notes) {
    public Estimate {
        jobs = List.copyOf(jobs);
        risk = List.copyOf(risk);
        shelf = List.copyOf(shelf);
        notes = List.copyOf(notes);
    }

    /** Whether a share is of a joint, and not of set-ups, parts or the whole car. */
    public static boolean isJoint(Share share) {
        return PlanTime.isJoint(share);
    }
}

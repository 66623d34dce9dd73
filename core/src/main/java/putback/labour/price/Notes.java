package putback.labour.price;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import putback.labour.share.Shares;
import putback.plan.PartNeed;
import putback.quantity.Minutes;

/** What a person should know about an estimate before it is told to a customer. */
final class Notes {
    private Notes() {}

    static List<String> of(
            Reckoned all, List<Job> jobs, Terms terms, @Nullable Shares shares, @Nullable Long minutesToCeiling) {
        List<String> notes = new ArrayList<>();
        List<String> unpriced = new ArrayList<>();
        for (PartNeed need : all.unpriced()) {
            unpriced.add(need.count() > 1 ? need.count() + " x " + need.name() : need.name());
        }
        if (!unpriced.isEmpty()) {
            notes.add("No price is known for " + String.join("; ", unpriced) + ": not in the total.");
        }
        if (minutesToCeiling != null && minutesToCeiling < 0 && terms.ceiling() != null) {
            notes.add("Parts with their tax alone are above the ceiling of "
                    + Money.rounded(terms.ceiling()).toPlainString() + ": call before the first spanner.");
        }
        if (shares != null) {
            aboveAlone(jobs, shares, notes);
        }
        return notes;
    }

    private static void aboveAlone(List<Job> jobs, Shares shares, List<String> notes) {
        for (int i = 0; i < jobs.size(); i++) {
            Minutes beyond = shares.minutes().get(i).minus(shares.alone().get(i));
            if (beyond.compareTo(shares.error().get(i)) > 0) {
                notes.add("The share of " + jobs.get(i).name()
                        + " is above what it takes alone: together they free a part that neither frees by itself.");
            }
        }
        if (!shares.exact()) {
            notes.add("The shares come from orders drawn at random, each with the error beside it; they add up exactly"
                    + " all the same.");
        }
    }

    /** Which jobs cost more together than alone, which a customer would ask about. */
    static List<String> aboveAlone(List<Job> jobs, Amounts amounts) {
        List<String> notes = new ArrayList<>();
        for (int i = 0; i < jobs.size(); i++) {
            if (amounts.isAboveAlone(i)) {
                notes.add("The amount of " + jobs.get(i).name() + ", "
                        + amounts.each().get(i).toPlainString() + ", is above what it costs alone, "
                        + amounts.alone().get(i).toPlainString() + ".");
            }
        }
        return notes;
    }
}

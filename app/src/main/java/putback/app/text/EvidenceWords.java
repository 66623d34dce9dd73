package putback.app.text;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import putback.labour.price.Estimate;
import putback.labour.price.Evidence;
import putback.labour.price.OwnFigures;

/**
 * A figure in which the garage's own cases count, in words.
 *
 * @param words which figure, and how many cases
 * @param assumed what would stand there without them
 * @param used what stands there
 */
public record EvidenceWords(String words, String assumed, String used) {
    /** What the two columns are, and what everything else rests on. */
    public static final String MEANING = "Minutes, or chances from 0 to 1. What is assumed counts like "
            + (int) OwnFigures.TIMES_ASSUMED + " times and " + (int) OwnFigures.CASES_ASSUMED
            + " cases. Everything that is not listed is an assumption.";

    /** All of an estimate, in its order. */
    public static List<EvidenceWords> of(Estimate estimate) {
        List<EvidenceWords> all = new ArrayList<>();
        for (Evidence one : estimate.evidence()) {
            int places = one.what().isTime() ? 1 : 2;
            all.add(new EvidenceWords(
                    one.name() + ", " + one.what().word() + ": your own " + one.seen() + " of these",
                    decimal(one.assumed(), places),
                    decimal(one.used(), places)));
        }
        return all;
    }

    private static String decimal(double value, int places) {
        return BigDecimal.valueOf(value).setScale(places, RoundingMode.HALF_UP).toPlainString();
    }
}

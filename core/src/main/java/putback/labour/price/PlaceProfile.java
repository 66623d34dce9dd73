package putback.labour.price;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What the law of a place usually asks of an estimate, as somebody has read it. It is no legal advice, and what is not
 * filled in is not known, which is not the same as not asked.
 *
 * @param id such as {@code ontario}
 * @param currency of its amounts, such as {@code USD}; empty when not known
 * @param before what has to be there before work starts; empty when not known
 * @param writtenConsent whether the customer's yes has to be in writing; null when not known
 * @param carries what an estimate has to say
 * @param overrun before a new approval is needed
 * @param beyond what a new approval is, in words; empty when not known
 * @param oldParts what becomes of the old parts; empty when not known
 * @param warranty on parts and work; empty when not known
 * @param source law and where it was read; empty when not known
 */
public record PlaceProfile(
        String id,
        String name,
        String currency,
        String before,
        @Nullable Boolean writtenConsent,
        List<EstimateEntry> carries,
        Overrun overrun,
        String beyond,
        String oldParts,
        String warranty,
        String source) {
    /** What goes with every profile. */
    public static final String CAUTION =
            "Not legal advice. It is a reading of public pages and may be wrong or out of date: ask where you work.";

    /** Nobody has said where the garage is; every field is blank. */
    public static final PlaceProfile NOT_SET =
            new PlaceProfile("not-set", "", "", "", null, List.of(), Overrun.UNKNOWN, "", "", "", "");

    public PlaceProfile {
        carries = List.copyOf(carries);
    }

    /** What has to be on the estimate and is not yet. */
    public List<EstimateEntry> missing(Estimate estimate) {
        List<EstimateEntry> missing = new ArrayList<>();
        for (EstimateEntry one : carries) {
            if (!one.isIn(estimate)) {
                missing.add(one);
            }
        }
        return missing;
    }

    /** Up to which total the approval of this estimate holds; null when not known. */
    public @Nullable BigDecimal approvedUpTo(Estimate estimate) {
        return overrun.upTo(estimate.invoice().total());
    }
}

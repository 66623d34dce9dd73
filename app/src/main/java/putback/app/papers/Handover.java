package putback.app.papers;

import java.util.List;
import org.jspecify.annotations.Nullable;
import putback.labour.price.Invoice;

/**
 * What goes with a car that is given back.
 *
 * @param title what the car is, or the sheet's title
 * @param draft why this is not the paper to hand over yet; empty when it is
 * @param done what was done, or in a draft is to be done, a sentence each
 * @param drives what the road tests showed, a sentence each
 * @param invoice null where there is nothing to pay
 * @param unpriced what is fitted and stands in no line of the invoice, in words
 * @param carried what stays open on purpose, by whom and why; the car is then not to be driven
 * @param cautions for the owner
 * @param recheck null where no wheel was off
 */
public record Handover(
        String title,
        String draft,
        List<String> done,
        List<String> drives,
        @Nullable Invoice invoice,
        List<String> unpriced,
        List<Finding> findings,
        List<String> carried,
        List<String> cautions,
        GarageTerms law,
        @Nullable Recheck recheck) {
    public Handover {
        done = List.copyOf(done);
        drives = List.copyOf(drives);
        unpriced = List.copyOf(unpriced);
        findings = List.copyOf(findings);
        carried = List.copyOf(carried);
        cautions = List.copyOf(cautions);
    }
}

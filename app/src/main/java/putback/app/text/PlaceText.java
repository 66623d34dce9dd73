package putback.app.text;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import putback.app.text.Page.Ink;
import putback.labour.price.Estimate;
import putback.labour.price.EstimateEntry;
import putback.labour.price.PlaceProfile;

/** What the law of a place usually asks, and what the estimate lacks of it. */
final class PlaceText {
    private final Page page;

    private PlaceText(Page page) {
        this.page = page;
    }

    static void write(Page page, PlaceProfile place, Estimate estimate) {
        if (!place.equals(PlaceProfile.NOT_SET)) {
            new PlaceText(page).write(place, estimate);
        }
    }

    private void write(PlaceProfile place, Estimate estimate) {
        page.gap().heading("STILL MISSING FOR AN ESTIMATE IN " + place.name().toUpperCase(Locale.ROOT), "");
        List<EstimateEntry> missing = place.missing(estimate);
        for (EstimateEntry one : missing) {
            page.words(Ink.PLAIN, "  - ", one.said());
        }
        if (missing.isEmpty()) {
            page.words(Ink.PLAIN, "  ", "Nothing of what is known to be asked.");
        }
        said("Before work", place.before());
        Boolean written = place.writtenConsent();
        said("Consent in writing", written == null ? "" : written ? "yes" : "no");
        said("A new approval", approval(place, estimate));
        said("Old parts", place.oldParts());
        said("Warranty", place.warranty());
        said("Source", place.source());
        page.words(Ink.OCHRE, "  ", PlaceProfile.CAUTION);
    }

    private static String approval(PlaceProfile place, Estimate estimate) {
        BigDecimal upTo = place.approvedUpTo(estimate);
        String from = upTo == null ? "" : "above " + upTo.toPlainString();
        return from.isEmpty() || place.beyond().isEmpty() ? from + place.beyond() : from + ": " + place.beyond();
    }

    private void said(String what, String words) {
        page.words(Ink.PLAIN, "  ", what + ": " + (words.isEmpty() ? "not known" : words) + ".");
    }
}

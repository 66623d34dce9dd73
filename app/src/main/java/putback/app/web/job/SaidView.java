package putback.app.web.job;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import putback.app.papers.HouseStyle;
import putback.store.books.Approval;
import putback.store.books.KeptEstimate;

/**
 * One estimate as the customer sees it: nothing of the garage's other work, nor of the customer's own data.
 *
 * @param estimate id of what is shown; empty where nothing can be put to him yet
 * @param likely total that is as often too much as too little
 * @param fourInFive total within which 4 jobs in 5 are done, or stopped to ask
 * @param asked up to which a yes is asked for
 * @param lacking what has no price yet and is in no figure
 * @param answered what was said to this very estimate; empty as long as nothing was
 * @param told what came of what he just did; may be empty
 */
public record SaidView(
        String garage,
        String phone,
        String number,
        String car,
        String estimate,
        String renewed,
        List<Row> lines,
        String likely,
        String fourInFive,
        String asked,
        List<String> lacking,
        String answered,
        String told) {
    public SaidView {
        lines = List.copyOf(lines);
        lacking = List.copyOf(lacking);
    }

    /** A line of the estimate. */
    public record Row(String text, String amount) {}

    static SaidView of(JobFile file, @Nullable KeptEstimate put, Map<String, String> settings, String told) {
        HouseStyle style = PaperPages.style(settings);
        List<Row> rows = new ArrayList<>();
        if (put != null) {
            for (KeptEstimate.Line line : put.lines()) {
                rows.add(new Row(line.text(), money(style, line.amount())));
            }
        }
        return new SaidView(
                PaperPages.text(settings, "garage"),
                PaperPages.text(settings, "phone"),
                file.job().number(),
                file.car().called(),
                put == null ? "" : put.id(),
                put == null ? "" : put.renewed(),
                rows,
                put == null ? "" : money(style, put.likely()),
                put == null ? "" : money(style, put.fourInFive()),
                put == null ? "" : money(style, put.asked()),
                put == null ? List.of() : put.lacking(),
                put == null ? "" : answered(file.answer(), put, style),
                told);
    }

    private static String money(HouseStyle style, String amount) {
        return style.money(new BigDecimal(amount));
    }

    /** The last word, when it was said to this estimate. */
    private static String answered(@Nullable Approval said, KeptEstimate put, HouseStyle style) {
        if (said == null || !said.estimate().equals(put.id())) {
            return "";
        }
        String upTo = said.upTo().isEmpty() ? "" : ", up to " + money(style, said.upTo());
        return said.who() + " said " + (said.yes() ? "yes" : "no") + upTo + " on " + JobView.day(said.at(), style)
                + ", " + said.how() + ".";
    }
}

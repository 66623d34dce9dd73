package putback.app.text;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import putback.app.asking.PriceQuestion;
import putback.app.ladder.Figures;
import putback.app.text.Page.Ink;
import putback.labour.price.Amounts;
import putback.labour.price.Estimate;
import putback.labour.price.Figure;
import putback.labour.price.Job;
import putback.labour.price.Line;
import putback.labour.price.Money;
import putback.labour.price.Risk;
import putback.labour.price.Spare;
import putback.labour.price.Terms;
import putback.labour.share.Shares;
import putback.labour.time.DrawnTimes;
import putback.sheet.Joint;

/** What a job takes and costs, for the desk. */
public final class PriceText {
    private static final int COLUMN = 10;
    private static final int MOST_RISKS = 6;

    private final Estimate estimate;
    private final PriceQuestion asked;
    private final Terms terms;
    private final Page page;

    private final Map<String, String> names = new HashMap<>();

    private PriceText(Estimate estimate, PriceQuestion asked, Page page) {
        for (Joint joint : asked.assembly().joints()) {
            names.put(joint.id(), joint.name());
        }
        this.estimate = estimate;
        this.asked = asked;
        this.terms = asked.terms();
        this.page = page;
    }

    /**
     * @param standing how long the car stands with several hands; null for one pair
     */
    public static String of(Estimate estimate, @Nullable DrawnTimes standing, PriceQuestion asked, Screen screen) {
        PriceText text = new PriceText(estimate, asked, new Page(screen));
        text.write(standing);
        return text.page.toString();
    }

    private void write(@Nullable DrawnTimes standing) {
        List<String> jobs = new ArrayList<>();
        for (Job job : estimate.jobs()) {
            jobs.add(job.name());
        }
        page.words(Ink.STRONG, "Estimate: " + String.join("; ", jobs));
        page.words(Ink.PLAIN, TermsWords.of(asked));
        if (estimate.chanceBeatsAll() > 0) {
            page.words(Ink.OCHRE, JamWords.headline(estimate));
            page.words(Ink.PLAIN, JamWords.counted(estimate));
        }
        lines();
        figures();
        ceiling();
        standing(standing);
        risk();
        seized();
        shares();
        learnt();
        sentences(estimate.notes());
        PlaceText.write(page, asked.place(), estimate);
    }

    private void lines() {
        page.gap().heading("ESTIMATE", "amount");
        for (Line one : estimate.invoice().lines()) {
            String quantity = one.quantity().stripTrailingZeros().toPlainString();
            String words =
                    switch (one.kind()) {
                        case LABOUR -> one.text() + ", " + quantity + " min";
                        case TAX -> one.text() + " " + quantity + " %";
                        case PARTS -> one.unit().equals("each") ? quantity + " x " + one.text() : one.text();
                    };
            row(words, one.amount().toPlainString());
        }
        row("Total", estimate.invoice().total().toPlainString());
    }

    private void figures() {
        page.gap().heading("HOW SURE", column("min") + column("total"));
        figure("Likely: as often less as more", estimate.likely());
        figure(JamWords.fourInFive(estimate), estimate.fourInFive());
        boolean early = estimate.stopAndCall().byCeiling();
        figure(
                "Stop and call before: " + (early ? "the ceiling is reached" : "1 in 20 takes longer"),
                estimate.stopAndCall().figure());
        if (early) {
            page.words(
                    Ink.PLAIN,
                    "  ",
                    "1 in 20 takes longer than " + Math.round(estimate.time().quantile(0.95))
                            + " min; the ceiling comes first.");
        }
        page.words(Ink.PLAIN, "  ", "On average " + decimal(estimate.time().mean()) + " min.");
    }

    private void figure(String words, Figure figure) {
        row(
                words,
                column(String.valueOf(figure.minutes())) + column(figure.total().toPlainString()));
    }

    private void ceiling() {
        Double over = estimate.chanceOverCeiling();
        Long within = estimate.minutesToCeiling();
        BigDecimal ceiling = terms.ceiling();
        if (over == null || within == null || ceiling == null) {
            return;
        }
        String agreed = Money.rounded(ceiling).toPlainString();
        String until = within < 0 ? "" : "; it is reached after " + within + " min of work";
        page.gap().words(Ink.PLAIN, "Above the ceiling of " + agreed + ": " + Odds.said(over) + until + ".");
    }

    private void standing(@Nullable DrawnTimes standing) {
        if (standing == null) {
            return;
        }
        page.gap().heading("HOW LONG THE CAR STANDS", "min");
        row("Likely", String.valueOf(Math.round(standing.quantile(0.5))));
        row(JamWords.fourInFive(estimate), String.valueOf(Math.round(standing.quantile(0.8))));
        row("1 in 20 takes longer than", String.valueOf(Math.round(standing.quantile(0.95))));
        page.words(
                Ink.PLAIN,
                "  ",
                "One person a side, drawn " + standing.count()
                        + " times; what is common waits for both, so a third saves nothing. The work to be paid is as"
                        + " above.");
    }

    private void risk() {
        page.gap().heading("WHAT MAKES IT UNSURE", "share");
        List<Risk> lines = estimate.riskLines(MOST_RISKS);
        for (Risk one : lines) {
            row(
                    one.id().isEmpty() ? "The whole car: what all its times have in common" : name(one.id()),
                    one.percent() + " %");
        }
        if (lines.isEmpty()) {
            row("Nothing: no time scatters", "");
        }
    }

    private void seized() {
        if (!estimate.soak().joints().isEmpty()) {
            page.gap().heading("SOAK THE NIGHT BEFORE", "");
            List<String> soaked = new ArrayList<>();
            for (String joint : estimate.soak().joints()) {
                soaked.add(name(joint));
            }
            page.words(Ink.PLAIN, "  ", String.join("; ", soaked));
            page.words(
                    Ink.PLAIN,
                    "  ",
                    "Saves " + decimal(estimate.soak().savesMinutes())
                            + " min on average, if a night doubles the penetrant's tries (assumed); the soaking itself is"
                            + " not counted.");
            page.words(Ink.PLAIN, "  ", SoakWords.CAUTION);
        }
        if (!estimate.shelf().isEmpty()) {
            page.gap().heading("HAVE READY, MAY BE NEEDED", column("chance") + column("each"));
            for (Spare one : estimate.shelf()) {
                row(
                        one.count() + " x fastener of " + one.name(),
                        column(Odds.said(one.chance())) + column(one.price().toPlainString()));
            }
        }
        if (estimate.expectedDamage() > 0) {
            page.words(
                    Ink.PLAIN,
                    "Fasteners that break or are cut cost " + decimal(estimate.expectedDamage(), 2)
                            + " on average, which is in no line above.");
        }
    }

    private void shares() {
        Shares shares = estimate.shares();
        Amounts amounts = estimate.amounts();
        if (shares == null || amounts == null) {
            return;
        }
        page.gap().heading("FAIR SHARES OF THE WORK, MIN", column("share") + column("alone"));
        for (int i = 0; i < estimate.jobs().size(); i++) {
            row(
                    estimate.jobs().get(i).name()
                            + (shares.exact()
                                    ? ""
                                    : ", give or take "
                                            + Figures.minutes(shares.error().get(i))),
                    column(Figures.minutes(shares.minutes().get(i)))
                            + column(Figures.minutes(shares.alone().get(i))));
        }
        page.words(
                Ink.PLAIN,
                "  ",
                "Shared is the least work of all together, " + Figures.minutes(shares.total())
                        + " min: opening, closing, handling and follow-ups. The labour above, "
                        + estimate.likely().minutes()
                        + " min, has set-ups and what may be seized in it as well, and is split in the same proportion.");
        page.gap().heading("WHAT EACH JOB COSTS", column("amount") + column("alone"));
        for (int i = 0; i < estimate.jobs().size(); i++) {
            row(
                    estimate.jobs().get(i).name(),
                    column(amounts.each().get(i).toPlainString())
                            + column(amounts.alone().get(i).toPlainString()));
        }
        row("Together", column(estimate.invoice().total().toPlainString()) + column(""));
    }

    private void learnt() {
        if (!asked.beliefs().own().hasAny()) {
            return;
        }
        page.gap().heading("WHAT YOU HAVE SEEN YOURSELF", column("assumed") + column("used"));
        for (EvidenceWords one : EvidenceWords.of(estimate)) {
            row(one.words(), column(one.assumed()) + column(one.used()));
        }
        page.words(Ink.PLAIN, "  ", EvidenceWords.MEANING);
    }

    private void sentences(List<String> notes) {
        if (notes.isEmpty()) {
            return;
        }
        page.gap().heading("NOTES", "");
        for (String note : notes) {
            page.words(Ink.PLAIN, "  - ", note);
        }
    }

    private String name(String id) {
        return names.getOrDefault(id, id);
    }

    private void row(String words, String figures) {
        page.row("  ", "  ", "", Ink.PLAIN, words, figures);
    }

    private static String column(String figure) {
        return " ".repeat(Math.max(1, COLUMN - figure.length())) + figure;
    }

    private static String decimal(double value) {
        return decimal(value, 1);
    }

    private static String decimal(double value, int places) {
        return BigDecimal.valueOf(value).setScale(places, RoundingMode.HALF_UP).toPlainString();
    }
}

package putback.app.papers;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import putback.app.papers.Block.Column;
import putback.app.papers.Block.Row;
import putback.app.text.JamWords;
import putback.app.text.Odds;
import putback.labour.price.Estimate;
import putback.labour.price.Figure;
import putback.labour.price.Job;
import putback.labour.price.Money;
import putback.labour.price.Stop;
import putback.labour.price.Terms;
import putback.labour.time.DrawnTimes;
import putback.plan.PartNeed;

/** What a customer says yes to: the price, how sure it is, what may change it, and who said yes. */
final class EstimatePaper {
    private static final int APPROVALS = 3;

    private final Quote quote;
    private final HouseStyle style;
    private final List<Block> blocks = new ArrayList<>();

    private EstimatePaper(Quote quote, HouseStyle style) {
        this.quote = quote;
        this.style = style;
    }

    static Paper of(Quote quote, GarageTerms law, JobHead head, HouseStyle style) {
        EstimatePaper paper = new EstimatePaper(quote, style);
        paper.work();
        paper.price();
        paper.howSure();
        paper.ceiling();
        paper.mayChange();
        paper.parts();
        paper.blocks.add(new Block.Heading("Terms"));
        paper.blocks.add(law.beforeWork());
        paper.approval();
        String title = JobCard.title(quote.plan(), head);
        return new Paper(Paper.Kind.ESTIMATE, title, JobCard.renew(quote.plan()), head, style, paper.blocks);
    }

    private void work() {
        List<String> jobs = new ArrayList<>();
        for (Job job : quote.estimate().jobs()) {
            jobs.add("Renew: " + job.name() + " (asked for)");
        }
        JobCard.sentences(blocks, "What is to be done", jobs);
        JobCard.sentences(
                blocks, "Suggested, and not in this price", quote.plan().advice());
    }

    private void price() {
        blocks.add(new Block.Heading("Price"));
        blocks.add(InvoiceTable.of(quote.estimate().invoice(), style));
        Terms terms = quote.terms();
        blocks.add(Block.Words.of("Labour is reckoned by the minute at "
                + style.money(Money.rounded(terms.ratePerHour())) + " an hour, for the likely time."
                + (terms.taxPercent().signum() == 0 ? " No tax is in these figures." : "")));
    }

    private void howSure() {
        Estimate estimate = quote.estimate();
        List<Row> rows = new ArrayList<>();
        rows.add(figure("Likely", "as often less as more; the price above", estimate.likely()));
        rows.add(figure(JamWords.fourInFive(estimate), "one in five takes longer", estimate.fourInFive()));
        Stop stop = estimate.stopAndCall();
        rows.add(figure(
                "Stop and call before",
                stop.byCeiling()
                        ? "the ceiling that was agreed; then you are asked first"
                        : "1 job in 20 takes longer: then you are asked first",
                stop.figure()));
        blocks.add(new Block.Heading("How sure"));
        if (estimate.chanceBeatsAll() > 0) {
            blocks.add(Block.Words.of(JamWords.headline(estimate) + " " + JamWords.counted(estimate)));
        }
        blocks.add(new Block.Table(
                List.of(
                        new Column("Figure", 62, false),
                        new Column("Minutes of work", 18, true),
                        new Column("Total", 20, true)),
                rows,
                true));
        DrawnTimes standing = quote.standing();
        if (standing != null) {
            blocks.add(Block.Words.of("With several people the car stands " + Math.round(standing.quantile(0.5))
                    + " min, and 4 times in 5 no more than " + Math.round(standing.quantile(0.8))
                    + " min. The work to be paid stays as above."));
        }
    }

    private Row figure(String name, String meaning, Figure figure) {
        return Row.Cells.of(
                Cell.of(name, List.of(meaning)), Cell.of("" + figure.minutes()), Cell.of(style.money(figure.total())));
    }

    private void ceiling() {
        BigDecimal ceiling = quote.terms().ceiling();
        Double over = quote.estimate().chanceOverCeiling();
        List<String> sentences = new ArrayList<>();
        sentences.add(
                ceiling == null
                        ? "Up to, with tax: ______________   (none has been named)"
                        : "Up to " + style.money(Money.rounded(ceiling)) + ", with tax."
                                + (over == null ? "" : " The odds of going above it: " + Odds.said(over) + "."));
        if (ceiling == null) {
            sentences.add("A yes is asked for up to "
                    + style.money(quote.estimate().fourInFive().total()) + ": 4 jobs in 5 stay within it.");
        }
        sentences.add("Nothing is done above it before you have been told why and have said yes again.");
        blocks.add(new Block.Framed("Ceiling", sentences));
    }

    private void mayChange() {
        List<String> why = new ArrayList<>();
        why.add(rust());
        if (quote.estimate().chanceBeatsAll() > 0) {
            why.add("A fixing that will not move whatever is tried: then work stops and you are called.");
        }
        if (quote.estimate().expectedDamage() > 0) {
            why.add("Fasteners and pieces that break or have to be cut are paid on top. On average that is "
                    + style.money(
                            Money.rounded(BigDecimal.valueOf(quote.estimate().expectedDamage()))) + ".");
        }
        for (String note : quote.estimate().notes()) {
            why.add(style.words(note));
        }
        why.add("What is found only when it is apart is told with its own price before it is done.");
        JobCard.sentences(blocks, "What may change the price", why);
    }

    private String rust() {
        return quote.rust() == 0
                ? "Rust: reckoned for clean fasteners. One that will not move takes longer and may break; no time and no"
                        + " money for that is in the price."
                : "Rust: reckoned for grade " + quote.rust() + " of 4. A rusted fastener may not move, may round or"
                        + " may break; the usual time for that is in the price, and on one car it is more or less.";
    }

    private void parts() {
        List<Row> rows = new ArrayList<>();
        for (PartNeed need : quote.plan().parts()) {
            rows.add(Row.Cells.of(
                    Cell.of("" + need.count()),
                    Cell.of(need.name(), need.reason().equals("renew") ? List.of() : List.of(need.reason())),
                    Cell.EMPTY,
                    Cell.TICK,
                    Cell.TICK,
                    Cell.TICK));
        }
        if (rows.isEmpty()) {
            return;
        }
        blocks.add(new Block.Heading("Parts"));
        blocks.add(new Block.Table(
                List.of(
                        new Column("Count", 8, true),
                        new Column("Part", 40, false),
                        new Column("Make and number", 25, false),
                        new Column("New", 7, false),
                        new Column("Used", 7, false),
                        new Column("Reconditioned", 13, false)),
                rows,
                true));
        blocks.add(Block.Words.of("A part is new unless it is ticked as used or reconditioned."));
    }

    private void approval() {
        List<Row> rows = new ArrayList<>();
        for (int i = 0; i < APPROVALS; i++) {
            rows.add(Row.Cells.of(Cell.of("\u00a0", List.of("\u00a0"))));
        }
        blocks.add(new Block.Heading("Who said yes"));
        blocks.add(new Block.Table(
                List.of(
                        new Column("Name", 24, false),
                        new Column("To what", 30, false),
                        new Column("Up to", 13, true),
                        new Column("How: signed, phone, mail", 18, false),
                        new Column("Date and time", 15, false)),
                rows,
                false));
        blocks.add(new Block.Fields(List.of(
                new Block.Field("Customer: I agree to the work above up to the ceiling. Signature", ""),
                new Block.Field("For the garage. Signature", ""))));
        blocks.add(Block.Words.of(GarageTerms.NO_ADVICE));
    }
}

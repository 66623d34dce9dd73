package putback.app.web.job;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import putback.app.papers.HouseStyle;
import putback.app.text.EvidenceWords;
import putback.app.text.Headline;
import putback.app.text.JamWords;
import putback.job.Course;
import putback.job.Stage;
import putback.job.Vin;
import putback.labour.price.Estimate;
import putback.labour.price.Figure;
import putback.plan.Plan;
import putback.quantity.Parsed;
import putback.store.books.Customer;
import putback.store.books.Finding;
import putback.store.books.PartPrice;

/**
 * A job as its page shows it.
 *
 * @param renewed what is renewed, in words; empty as long as nothing is named
 * @param fault why there is no plan or price; empty for nothing
 * @param rust how rusty it is, in words
 * @param priceAddress where its price is shown in full
 * @param figures likely, 4 in 5, stop and call; empty without a price
 * @param own figures in which the garage's own cases count; empty where everything is an assumption
 * @param jams how many jobs end at a fixing that nothing moves; empty where none can
 * @param ask why it has to be asked again; empty when it has not
 * @param parts what the plan needs and what is on its way
 * @param offered fluids and the like that went into this model before
 * @param said what came of the last thing that was tried; may be empty
 * @param typed what was typed and could not be kept yet
 */
public record JobView(
        JobFile file,
        String owner,
        String vinDoubt,
        String renewed,
        String fault,
        String rust,
        String priceAddress,
        List<Row> figures,
        List<EvidenceWords> own,
        String jams,
        Offer offer,
        String ask,
        List<Stage> next,
        Ledger ledger,
        List<PartRow> parts,
        List<PartPrice> offered,
        Places places,
        String said,
        Typed typed) {
    public JobView {
        figures = List.copyOf(figures);
        own = List.copyOf(own);
        next = List.copyOf(next);
        parts = List.copyOf(parts);
        offered = List.copyOf(offered);
    }

    /** One of the three figures. */
    public record Row(String words, String minutes, String total) {}

    /**
     * What is put to the owner.
     *
     * @param asked up to how much a yes is asked for, as a decimal; empty without a price
     * @param shown the same with its currency
     * @param not why it cannot be put to him; empty when it can
     * @param rateIsExample whether nobody has said what an hour costs
     * @param examples parts that rest on an example price
     * @param lacking parts without any price
     */
    public record Offer(
            String asked,
            String shown,
            String not,
            boolean rateIsExample,
            List<String> examples,
            List<String> lacking,
            boolean currencyKnown) {}

    /**
     * What was done so far.
     *
     * @param owes what is still owed, in words
     * @param notDriven why the car is not to be driven; empty where nothing keeps it but what is owed
     * @param broke what broke and has no new one yet
     * @param started whether anything has come apart
     */
    public record Ledger(List<String> owes, List<String> notDriven, List<String> broke, boolean started) {
        public Ledger {
            broke = List.copyOf(broke);
            owes = List.copyOf(owes);
            notDriven = List.copyOf(notDriven);
        }
    }

    static JobView of(JobFile file, Quoting quoting, HouseStyle style, Ledger ledger, String said, Typed typed) {
        Customer customer = file.customer();
        Plan plan = quoting.plan();
        Estimate estimate = file.closed().isEmpty() ? quoting.estimate() : null;
        BigDecimal asked = quoting.asked();
        return new JobView(
                file,
                customer == null ? "owner not known" : customer.name(),
                doubt(file.car().vin()),
                plan == null ? "" : Headline.renewed(plan),
                quoting.fault(),
                Rust.said(
                        file.job().scope(),
                        plan == null ? List.of() : plan.assembly().joints()),
                file.priceAddress(quoting.values()),
                figures(estimate, style),
                estimate == null ? List.of() : EvidenceWords.of(estimate),
                estimate == null ? "" : JamWords.headline(estimate),
                new Offer(
                        asked == null ? "" : asked.toPlainString(),
                        asked == null ? "" : style.money(asked),
                        quoting.notToBeOffered(),
                        quoting.isRateAnExample(),
                        quoting.examples(),
                        quoting.lacking(),
                        !style.currency().isEmpty()),
                file.closed().isEmpty() && quoting.isOver(file.lastYes())
                        ? "The price is now above what was agreed: ask again."
                        : "",
                Course.next(file.job().stage()),
                ledger,
                PartRow.of(file, plan),
                file.prices().offered(),
                Places.of(plan),
                said,
                typed);
    }

    /** What is still owed, in words. */
    public List<String> owes() {
        return ledger.owes();
    }

    /** Why the car is not to be driven; empty where nothing keeps it but what is owed. */
    public List<String> notDriven() {
        return ledger.notDriven();
    }

    /** What broke and has no new one yet, with who said so and when. */
    public List<String> broke() {
        return ledger.broke();
    }

    /** Whether anything has come apart. */
    public boolean started() {
        return ledger.started();
    }

    /** What is wrong with a VIN in words; empty for nothing. */
    public static String doubt(String vin) {
        if (vin.isEmpty()) {
            return "";
        }
        Parsed<Vin> read = Vin.read(vin);
        return read instanceof Parsed.Value<Vin> good ? good.value().doubt() : read.refusal() + ".";
    }

    private static List<Row> figures(@Nullable Estimate estimate, HouseStyle style) {
        List<Row> rows = new ArrayList<>();
        if (estimate != null) {
            rows.add(row(style, "Likely", estimate.likely()));
            rows.add(row(style, JamWords.fourInFive(estimate), estimate.fourInFive()));
            rows.add(row(style, "Stop and call before", estimate.stopAndCall().figure()));
        }
        return rows;
    }

    private static Row row(HouseStyle style, String words, Figure figure) {
        return new Row(words, figure.minutes() + " min", style.money(figure.total()));
    }

    /** One of the job's own terms; empty where the garage's hold. */
    public String term(String name) {
        for (String pair : file.job().scope().terms().split("&", -1)) {
            if (pair.startsWith(name + "=")) {
                return pair.substring(name.length() + 1);
            }
        }
        return "";
    }

    /** A day as the garage writes it. */
    public static String day(String at, HouseStyle style) {
        return at.length() < 10 ? at : style.date(LocalDate.parse(at.substring(0, 10)));
    }

    /** A day with its hour and minute, as the garage writes it (UTC). */
    public static String when(String at, HouseStyle style) {
        return at.length() < 16 ? at : day(at, style) + " " + at.substring(11, 16);
    }

    /** A time as a person reads it; the day, hour and minute of the garage's own books (UTC). */
    public static String when(String at) {
        return at.length() < 16 ? at : at.substring(0, 10) + " " + at.substring(11, 16);
    }

    /** What became of a finding: the owner's answer in his words, and who wrote it down. */
    public static String answered(Finding found) {
        String answer =
                switch (found.answer()) {
                    case "agreed" -> "the owner wants it done";
                    case "declined" -> "the owner said no";
                    default -> "not answered yet";
                };
        return answer
                + (found.said().isEmpty() ? "" : ": “" + found.said() + "”")
                + (found.answeredBy().isEmpty() ? "" : ", written down by " + found.answeredBy());
    }

    /** What a button that moves the job says. */
    public static String verb(Stage to) {
        return switch (to) {
            case ASKED -> "Open it again";
            case LOOKED_OVER -> "Looked over";
            case PRICED -> "Price is ready";
            case AGREED -> "Agreed";
            case UNDER_WAY -> "Start the work";
            case TOGETHER -> "Together again";
            case HANDED_OVER -> "Hand over";
            case DECLINED -> "Declined";
        };
    }
}

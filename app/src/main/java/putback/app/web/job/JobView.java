package putback.app.web.job;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import putback.app.text.EvidenceWords;
import putback.app.text.Headline;
import putback.app.text.JamWords;
import putback.job.Course;
import putback.job.Stage;
import putback.job.Vin;
import putback.labour.price.Figure;
import putback.plan.Plan;
import putback.quantity.Parsed;
import putback.store.books.Approval;
import putback.store.books.Customer;
import putback.store.books.Finding;

/**
 * A job as its page shows it.
 *
 * @param renewed what is renewed, in words; empty as long as nothing is named
 * @param fault why there is no plan or price; empty for nothing
 * @param figures likely, 4 in 5, stop and call; empty without a price
 * @param own figures in which the garage's own cases count; empty where everything is an assumption
 * @param jams how many jobs end at a fixing that nothing moves; empty where none can
 * @param ask why it has to be asked again; empty when it has not
 * @param owes what is still owed, in words
 * @param notDriven why the car is not to be driven; empty where nothing keeps it but what is owed
 * @param said what came of the last thing that was tried; may be empty
 */
public record JobView(
        JobFile file,
        String owner,
        String vinDoubt,
        String renewed,
        String fault,
        List<Row> figures,
        List<EvidenceWords> own,
        String jams,
        String total,
        String ask,
        List<Stage> next,
        List<String> owes,
        List<String> notDriven,
        boolean started,
        String said) {
    public JobView {
        figures = List.copyOf(figures);
        own = List.copyOf(own);
        next = List.copyOf(next);
        owes = List.copyOf(owes);
        notDriven = List.copyOf(notDriven);
    }

    /** One of the three figures. */
    public record Row(String words, String minutes, String total) {}

    static JobView of(
            JobFile file, Quoting quoting, List<String> owes, List<String> notDriven, boolean started, String said) {
        Customer customer = file.customer();
        Plan plan = quoting.plan();
        BigDecimal total = quoting.total();
        return new JobView(
                file,
                customer == null ? "owner not known" : customer.name(),
                doubt(file.car().vin()),
                plan == null ? "" : Headline.renewed(plan),
                quoting.fault(),
                figures(quoting),
                quoting.estimate() == null ? List.of() : EvidenceWords.of(quoting.estimate()),
                quoting.estimate() == null ? "" : JamWords.headline(quoting.estimate()),
                total == null ? "" : total.toPlainString(),
                quoting.isOver(file.answer()) ? "The price is now above what was agreed: ask again." : "",
                Course.next(file.job().stage()),
                owes,
                notDriven,
                started,
                said);
    }

    /** What is wrong with a VIN in words; empty for nothing. */
    public static String doubt(String vin) {
        if (vin.isEmpty()) {
            return "";
        }
        Parsed<Vin> read = Vin.read(vin);
        return read instanceof Parsed.Value<Vin> good ? good.value().doubt() : read.refusal() + ".";
    }

    private static List<Row> figures(Quoting quoting) {
        List<Row> rows = new ArrayList<>();
        if (quoting.estimate() != null) {
            rows.add(row("Likely", quoting.estimate().likely()));
            rows.add(row(
                    JamWords.fourInFive(quoting.estimate()), quoting.estimate().fourInFive()));
            rows.add(
                    row("Stop and call before", quoting.estimate().stopAndCall().figure()));
        }
        return rows;
    }

    private static Row row(String words, Figure figure) {
        return new Row(words, figure.minutes() + " min", figure.total().toPlainString());
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

    /** What somebody said last; null as long as nobody has. */
    public @Nullable Approval answer() {
        return file.answer();
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

package putback.app.web.job;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import putback.app.text.Headline;
import putback.labour.price.Estimate;
import putback.labour.price.Invoice;
import putback.labour.price.Line;
import putback.plan.Plan;
import putback.store.books.Approval;
import putback.store.books.KeptEstimate;

/** What is charged for a job: worked out until the car is handed over, and from then on as it was kept. */
final class Charged {
    private Charged() {}

    /**
     * What is charged now.
     *
     * @param again what went on beyond the plan, in words
     * @return null where no price can be worked out
     */
    static @Nullable KeptEstimate now(JobFile file, Quoting quoting, List<String> again, String currency, String by) {
        Estimate made = quoting.estimate();
        Plan plan = quoting.plan();
        if (made == null || plan == null) {
            return null;
        }
        Approval yes = file.lastYes();
        return new KeptEstimate(
                "",
                file.job().id(),
                0,
                "",
                by,
                Headline.renewed(plan),
                made.invoice().total().toPlainString(),
                "",
                yes == null ? "" : yes.upTo(),
                currency,
                unpriced(quoting, again),
                Quoting.lines(made.invoice()));
    }

    /** What is fitted and stands in no line. */
    static List<String> unpriced(Quoting quoting, List<String> again) {
        List<String> names = new ArrayList<>();
        quoting.lacking().forEach(name -> names.add(name + ": without a price"));
        again.forEach(name -> names.add(name + ": a new one once more, for one that broke"));
        return names;
    }

    /** The lines that were kept, as they are printed. */
    static Invoice printed(KeptEstimate kept) {
        List<Line> lines = new ArrayList<>();
        for (KeptEstimate.Line line : kept.lines()) {
            lines.add(new Line(
                    kind(line.unit()),
                    line.text(),
                    new BigDecimal(line.quantity()),
                    line.unit(),
                    new BigDecimal(line.amount())));
        }
        return new Invoice(lines);
    }

    private static Line.Kind kind(String unit) {
        return switch (unit) {
            case "min" -> Line.Kind.LABOUR;
            case "%" -> Line.Kind.TAX;
            default -> Line.Kind.PARTS;
        };
    }
}

package putback.app.web.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import putback.app.text.Headline;
import putback.labour.price.Line;

/** One estimate as the customer sees it: nothing of the garage's other work, nor of the customer's own data. */
public record SaidView(
        String garage, String number, String car, String renewed, List<Row> lines, String total, String said) {
    public SaidView {
        lines = List.copyOf(lines);
    }

    /** A line of the estimate. */
    public record Row(String text, String amount) {}

    static SaidView of(JobFile file, Quoting quoting, Map<String, String> settings, String said) {
        List<Row> rows = new ArrayList<>();
        if (quoting.estimate() != null) {
            for (Line line : quoting.estimate().invoice().lines()) {
                rows.add(new Row(line.text(), line.amount().toPlainString()));
            }
        }
        String garage = settings.get("garage");
        return new SaidView(
                garage == null ? "" : garage,
                file.job().number(),
                file.car().called(),
                quoting.plan() == null ? "" : Headline.renewed(quoting.plan()),
                rows,
                JobPages.total(quoting.total()),
                said);
    }
}

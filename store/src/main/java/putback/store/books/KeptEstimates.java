package putback.store.books;

import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import putback.store.database.Change;

/**
 * The estimates that were put to owners, and the invoice that went with the car, each as it was; none is ever altered.
 */
public final class KeptEstimates {
    /** Estimates are counted from 1; the invoice of a job stands before them, and there is one at most. */
    private static final int INVOICE = 0;

    private final Books books;

    public KeptEstimates(Books books) {
        this.books = books;
    }

    /** Estimates of one job, the oldest first. */
    public List<KeptEstimate> of(String job) {
        return books.read(handle -> estimates(handle, job));
    }

    /** What was charged when the car was handed over. */
    public Optional<KeptEstimate> invoice(String job) {
        return books.read(handle -> all(handle, job).stream()
                .filter(kept -> kept.number() == INVOICE)
                .findFirst());
    }

    private static List<KeptEstimate> estimates(Handle handle, String job) {
        return all(handle, job).stream()
                .filter(kept -> kept.number() != INVOICE)
                .toList();
    }

    private static List<KeptEstimate> all(Handle handle, String job) {
        return handle.createQuery("select id, job, number, at, by_name, renewed, likely, four_in_five, asked, currency,"
                        + " lacking from estimate where job = :job order by number")
                .bind("job", job)
                .map((row, context) -> new KeptEstimate(
                        row.getString("id"),
                        row.getString("job"),
                        row.getInt("number"),
                        row.getString("at"),
                        row.getString("by_name"),
                        row.getString("renewed"),
                        row.getString("likely"),
                        row.getString("four_in_five"),
                        row.getString("asked"),
                        row.getString("currency"),
                        names(row.getString("lacking")),
                        lines(handle, row.getString("id"))))
                .list();
    }

    private static List<String> names(String lacking) {
        return lacking.isEmpty() ? List.of() : List.of(lacking.split("\n", -1));
    }

    private static List<KeptEstimate.Line> lines(Handle handle, String estimate) {
        return handle.createQuery(
                        "select text, quantity, unit, amount from estimate_line where estimate = :id order by number")
                .bind("id", estimate)
                .map((row, context) -> new KeptEstimate.Line(
                        row.getString("text"),
                        row.getString("quantity"),
                        row.getString("unit"),
                        row.getString("amount")))
                .list();
    }

    /** Keeps one under the job's next number; the last one again where it says the same. */
    public KeptEstimate keep(Change change, KeptEstimate put) {
        List<KeptEstimate> before = estimates(change.handle(), put.job());
        if (!before.isEmpty() && before.get(before.size() - 1).saysTheSame(put)) {
            return before.get(before.size() - 1);
        }
        return keep(change, put, before.size() + 1);
    }

    /** Keeps what is charged as the job's only invoice. */
    public KeptEstimate keepInvoice(Change change, KeptEstimate charged) {
        return keep(change, charged, INVOICE);
    }

    private KeptEstimate keep(Change change, KeptEstimate put, int number) {
        KeptEstimate kept = new KeptEstimate(
                books.newId(),
                put.job(),
                number,
                books.now(),
                put.by(),
                put.renewed(),
                put.likely(),
                put.fourInFive(),
                put.asked(),
                put.currency(),
                put.lacking(),
                put.lines());
        insert(change.handle(), kept);
        for (int i = 0; i < kept.lines().size(); i++) {
            insert(change.handle(), kept.id(), i + 1, kept.lines().get(i));
        }
        change.tell("job:" + kept.job());
        return kept;
    }

    private static void insert(Handle handle, KeptEstimate kept) {
        handle.createUpdate("insert into estimate (id, job, number, at, by_name, renewed, likely, four_in_five, asked,"
                        + " currency, lacking) values (:id, :job, :number, :at, :by, :renewed, :likely, :fourInFive,"
                        + " :asked, :currency, :lacking)")
                .bind("id", kept.id())
                .bind("job", kept.job())
                .bind("number", kept.number())
                .bind("at", kept.at())
                .bind("by", kept.by())
                .bind("renewed", kept.renewed())
                .bind("likely", kept.likely())
                .bind("fourInFive", kept.fourInFive())
                .bind("asked", kept.asked())
                .bind("currency", kept.currency())
                .bind("lacking", String.join("\n", kept.lacking()))
                .execute();
    }

    private static void insert(Handle handle, String estimate, int number, KeptEstimate.Line line) {
        handle.createUpdate("insert into estimate_line (estimate, number, text, quantity, unit, amount)"
                        + " values (:estimate, :number, :text, :quantity, :unit, :amount)")
                .bind("estimate", estimate)
                .bind("number", number)
                .bind("text", line.text())
                .bind("quantity", line.quantity())
                .bind("unit", line.unit())
                .bind("amount", line.amount())
                .execute();
    }
}

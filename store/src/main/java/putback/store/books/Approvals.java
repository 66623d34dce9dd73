package putback.store.books;

import java.util.List;
import org.jdbi.v3.core.mapper.RowMapper;
import org.jspecify.annotations.Nullable;
import putback.store.database.Change;

/** What was said to prices. */
public final class Approvals {
    private static final RowMapper<Approval> ROW = (row, context) -> new Approval(
            row.getString("id"),
            row.getString("job"),
            row.getString("who"),
            row.getString("how"),
            row.getString("at"),
            row.getInt("yes") == 1,
            row.getString("up_to"),
            row.getString("total"),
            row.getString("words"),
            row.getString("taken_by"),
            row.getString("estimate") == null ? "" : row.getString("estimate"));

    private final Books books;

    public Approvals(Books books) {
        this.books = books;
    }

    /** Of one job, the oldest first; the last one holds. */
    public List<Approval> of(String job) {
        return books.read(
                handle -> handle.createQuery("select id, job, who, how, at, yes, up_to, total, words, taken_by,"
                                + " estimate from approval where job = :job order by at, id")
                        .bind("job", job)
                        .map(ROW)
                        .list());
    }

    /** Writes one down; its id and time are given here. */
    public Approval add(Change change, Approval said) {
        Approval kept = new Approval(
                books.newId(),
                said.job(),
                said.who(),
                said.how(),
                books.now(),
                said.yes(),
                said.upTo(),
                said.total(),
                said.words(),
                said.takenBy(),
                said.estimate());
        @Nullable String estimate = kept.estimate().isEmpty() ? null : kept.estimate();
        change.handle()
                .createUpdate(
                        "insert into approval (id, job, who, how, at, yes, up_to, total, words, taken_by, estimate)"
                                + " values (:id, :job, :who, :how, :at, :yes, :upTo, :total, :words, :takenBy, :estimate)")
                .bind("id", kept.id())
                .bind("job", kept.job())
                .bind("who", kept.who())
                .bind("how", kept.how())
                .bind("at", kept.at())
                .bind("yes", kept.yes() ? 1 : 0)
                .bind("upTo", kept.upTo())
                .bind("total", kept.total())
                .bind("words", kept.words())
                .bind("takenBy", kept.takenBy())
                .bind("estimate", estimate)
                .execute();
        change.tell("job:" + kept.job());
        return kept;
    }
}

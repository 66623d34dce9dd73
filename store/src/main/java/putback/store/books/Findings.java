package putback.store.books;

import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.mapper.RowMapper;
import putback.store.database.Change;

/** What was found beside the jobs, and what was said to it. */
public final class Findings {
    private static final String SELECT = "select id, job, place, words, urgency, price, answer, answered_by, said, at,"
            + " by_name, version from finding where ";
    private static final RowMapper<Finding> ROW = (row, context) -> new Finding(
            row.getString("id"),
            row.getString("job"),
            row.getString("place"),
            row.getString("words"),
            row.getString("urgency"),
            row.getString("price"),
            row.getString("answer"),
            row.getString("answered_by"),
            row.getString("said"),
            row.getString("at"),
            row.getString("by_name"),
            row.getInt("version"));

    private final Books books;

    public Findings(Books books) {
        this.books = books;
    }

    /** Of one job, in the order found. */
    public List<Finding> of(String job) {
        return books.read(handle -> handle.createQuery(SELECT + "job = :job order by at, id")
                .bind("job", job)
                .map(ROW)
                .list());
    }

    /** Writes one down as open; its id and time are given here. */
    public Finding add(Change change, Finding found) {
        Finding kept = new Finding(
                books.newId(),
                found.job(),
                found.place(),
                found.words(),
                found.urgency(),
                found.price(),
                "open",
                "",
                "",
                books.now(),
                found.by(),
                1);
        change.handle()
                .createUpdate("insert into finding (id, job, place, words, urgency, price, at, by_name)"
                        + " values (:id, :job, :place, :words, :urgency, :price, :at, :by)")
                .bind("id", kept.id())
                .bind("job", kept.job())
                .bind("place", kept.place())
                .bind("words", kept.words())
                .bind("urgency", kept.urgency())
                .bind("price", kept.price())
                .bind("at", kept.at())
                .bind("by", kept.by())
                .execute();
        new Jobs(books).alsoFoundBy(change, kept.job(), kept.words());
        change.tell("job:" + kept.job());
        return kept;
    }

    /**
     * Writes down what was said to one, over the version that was read.
     *
     * @param said the owner's own words; may be empty
     * @param by who writes it down
     */
    public Saved<Finding> answer(Change change, Finding found, String answer, String said, String by) {
        int rows = change.handle()
                .createUpdate(
                        "update finding set answer = :answer, answered_by = :by, said = :said, version = version + 1"
                                + " where id = :id and job = :job and version = :version")
                .bind("answer", answer)
                .bind("said", said)
                .bind("by", by)
                .bind("id", found.id())
                .bind("job", found.job())
                .bind("version", found.version())
                .execute();
        change.tell("job:" + found.job());
        return Outcome.of(rows, find(change.handle(), found.id()));
    }

    private static Optional<Finding> find(Handle handle, String id) {
        return handle.createQuery(SELECT + "id = :id").bind("id", id).map(ROW).findFirst();
    }
}

package putback.store.books;

import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.mapper.RowMapper;
import putback.store.database.Change;

/** What is to be looked at again, and what was. */
public final class Rechecks {
    private static final String SELECT = "select recheck.id, recheck.job, due_on, due_distance, what, done_at,"
            + " done_distance, done_by, seen, recheck.version from recheck ";
    private static final RowMapper<Recheck> ROW = (row, context) -> new Recheck(
            row.getString("id"),
            row.getString("job"),
            row.getString("due_on"),
            row.getString("due_distance"),
            row.getString("what"),
            row.getString("done_at"),
            row.getString("done_distance"),
            row.getString("done_by"),
            row.getString("seen"),
            row.getInt("version"));

    private final Books books;

    public Rechecks(Books books) {
        this.books = books;
    }

    /** Of one job, by the day they are due. */
    public List<Recheck> of(String job) {
        return books.read(handle -> handle.createQuery(SELECT + "where job = :job order by due_on, id")
                .bind("job", job)
                .map(ROW)
                .list());
    }

    /** Not done, and due on this day or before, the oldest first. */
    public List<Recheck> due(String day, int most) {
        return books.read(handle -> handle.createQuery(SELECT + "join job on job.id = recheck.job"
                        + " where job.garage = :garage and done_at = '' and due_on <= :day"
                        + " order by due_on, recheck.id limit :most")
                .bind("garage", books.garage())
                .bind("day", day)
                .bind("most", most)
                .map(ROW)
                .list());
    }

    /** Books one; its id is given here. */
    public Recheck add(Change change, String job, String dueOn, String dueDistance, String what) {
        Recheck kept = new Recheck(books.newId(), job, dueOn, dueDistance, what, "", "", "", "", 1);
        change.handle()
                .createUpdate("insert into recheck (id, job, due_on, due_distance, what)"
                        + " values (:id, :job, :dueOn, :dueDistance, :what)")
                .bind("id", kept.id())
                .bind("job", job)
                .bind("dueOn", dueOn)
                .bind("dueDistance", dueDistance)
                .bind("what", what)
                .execute();
        change.tell("job:" + job);
        return kept;
    }

    /** Writes down that it was done, over the version that was read. */
    public Saved<Recheck> done(Change change, Recheck recheck, String distance, String by, String seen) {
        int rows = change.handle()
                .createUpdate("update recheck set done_at = :at, done_distance = :distance, done_by = :by,"
                        + " seen = :seen, version = version + 1 where id = :id and job = :job and version = :version")
                .bind("at", books.now())
                .bind("distance", distance)
                .bind("by", by)
                .bind("seen", seen)
                .bind("id", recheck.id())
                .bind("job", recheck.job())
                .bind("version", recheck.version())
                .execute();
        change.tell("job:" + recheck.job());
        return Outcome.of(rows, find(change.handle(), recheck.id()));
    }

    private static Optional<Recheck> find(Handle handle, String id) {
        return handle.createQuery(SELECT + "where recheck.id = :id")
                .bind("id", id)
                .map(ROW)
                .findFirst();
    }
}

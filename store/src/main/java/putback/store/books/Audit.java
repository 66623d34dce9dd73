package putback.store.books;

import java.util.List;
import org.jspecify.annotations.Nullable;
import putback.store.database.Change;

/** Who did what to money and approvals, and when. */
public final class Audit {
    /**
     * One line.
     *
     * @param job empty for none
     */
    public record Entry(String at, String by, String job, String what, String words) {}

    private final Books books;

    public Audit(Books books) {
        this.books = books;
    }

    /** Adds a line, in the same change as what it tells of. */
    public void add(Change change, String by, String job, String what, String words) {
        @Nullable String about = job.isEmpty() ? null : job;
        change.handle()
                .createUpdate("insert into audit (id, garage, at, by_name, job, what, words)"
                        + " values (:id, :garage, :at, :by, :job, :what, :words)")
                .bind("id", books.newId())
                .bind("garage", books.garage())
                .bind("at", books.now())
                .bind("by", by)
                .bind("job", about)
                .bind("what", what)
                .bind("words", words)
                .execute();
    }

    /** Of one job, the oldest first. */
    public List<Entry> of(String job) {
        return books.read(handle -> handle.createQuery(
                        "select at, by_name, job, what, words from audit where garage = :garage and job = :job"
                                + " order by at, id")
                .bind("garage", books.garage())
                .bind("job", job)
                .map((row, context) -> new Entry(
                        row.getString("at"),
                        row.getString("by_name"),
                        row.getString("job"),
                        row.getString("what"),
                        row.getString("words")))
                .list());
    }

    /** Of the whole garage, the newest first. */
    public List<Entry> latest(int most) {
        return books.read(handle -> handle.createQuery("select at, by_name, coalesce(job, '') as about, what, words"
                        + " from audit where garage = :garage order by at desc, id desc limit :most")
                .bind("garage", books.garage())
                .bind("most", most)
                .map((row, context) -> new Entry(
                        row.getString("at"),
                        row.getString("by_name"),
                        row.getString("about"),
                        row.getString("what"),
                        row.getString("words")))
                .list());
    }
}

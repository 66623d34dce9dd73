package putback.store.books;

import java.util.List;
import putback.job.Stage;
import putback.store.database.Change;

/** The courses of the jobs. */
public final class Moves {
    private final Books books;

    public Moves(Books books) {
        this.books = books;
    }

    /** From the first to the last. */
    public List<Move> of(String job) {
        return books.read(handle -> handle.createQuery(
                        "select number, stage, at, by_name, why from job_move where job = :job order by number")
                .bind("job", job)
                .map((row, context) -> {
                    Stage stage = Stage.named(row.getString("stage"));
                    return new Move(
                            row.getInt("number"),
                            stage == null ? Stage.ASKED : stage,
                            row.getString("at"),
                            row.getString("by_name"),
                            row.getString("why"));
                })
                .list());
    }

    void add(Change change, String job, Stage stage, String by, String why) {
        change.handle()
                .createUpdate("insert into job_move (job, number, stage, at, by_name, why) values (:job,"
                        + " (select coalesce(max(number), 0) + 1 from job_move where job = :job), :stage, :at, :by,"
                        + " :why)")
                .bind("job", job)
                .bind("stage", stage.words())
                .bind("at", books.now())
                .bind("by", by)
                .bind("why", why)
                .execute();
    }
}

package putback.store.books;

import java.util.List;
import putback.store.database.Change;

/** The devices that work at the cars. One that is silent may hold steps that nobody else knows of. */
public final class HeardDevices {
    private final Books books;

    public HeardDevices(Books books) {
        this.books = books;
    }

    /** Of one job, the one that is silent for the longest first. */
    public List<Heard> of(String job) {
        return books.read(handle -> handle.createQuery("select job, device, by_name, at, unsent, ahead_seconds"
                        + " from heard where job = :job order by at, device")
                .bind("job", job)
                .map((row, context) -> new Heard(
                        row.getString("job"),
                        row.getString("device"),
                        row.getString("by_name"),
                        row.getString("at"),
                        row.getInt("unsent"),
                        row.getLong("ahead_seconds")))
                .list());
    }

    /** Writes down what a device says of itself, with the time of now. */
    public void hear(Change change, Heard said) {
        change.handle()
                .createUpdate("insert into heard (job, device, by_name, at, unsent, ahead_seconds)"
                        + " values (:job, :device, :by, :at, :unsent, :ahead) on conflict (job, device) do update"
                        + " set by_name = excluded.by_name, at = excluded.at, unsent = excluded.unsent,"
                        + " ahead_seconds = excluded.ahead_seconds")
                .bind("job", said.job())
                .bind("device", said.device())
                .bind("by", said.by())
                .bind("at", books.now())
                .bind("unsent", said.unsent())
                .bind("ahead", said.aheadSeconds())
                .execute();
        change.tell("heard:" + said.job());
    }
}

package putback.store.books;

import java.util.List;
import putback.store.database.Change;

/** Road tests before and after. */
public final class RoadTests {
    private final Books books;

    public RoadTests(Books books) {
        this.books = books;
    }

    /** Of one job, in their order. */
    public List<RoadTest> of(String job) {
        return books.read(handle -> handle.createQuery(
                        "select id, job, moment, conditions, found, at, by_name from road_test where job = :job"
                                + " order by at, id")
                .bind("job", job)
                .map((row, context) -> new RoadTest(
                        row.getString("id"),
                        row.getString("job"),
                        row.getString("moment"),
                        row.getString("conditions"),
                        row.getString("found"),
                        row.getString("at"),
                        row.getString("by_name")))
                .list());
    }

    /** Writes one down. */
    public RoadTest add(Change change, String job, String moment, String conditions, String found, String by) {
        RoadTest kept = new RoadTest(books.newId(), job, moment, conditions, found, books.now(), by);
        change.handle()
                .createUpdate("insert into road_test (id, job, moment, conditions, found, at, by_name)"
                        + " values (:id, :job, :moment, :conditions, :found, :at, :by)")
                .bind("id", kept.id())
                .bind("job", job)
                .bind("moment", moment)
                .bind("conditions", conditions)
                .bind("found", found)
                .bind("at", kept.at())
                .bind("by", by)
                .execute();
        change.tell("job:" + job);
        return kept;
    }
}

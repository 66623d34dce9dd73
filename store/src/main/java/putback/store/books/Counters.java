package putback.store.books;

import java.util.Locale;
import putback.store.database.Change;

/** Numbers that follow one another without a gap, also when two nodes ask at once. */
final class Counters {
    private final Books books;

    Counters(Books books) {
        this.books = books;
    }

    /** The next number of a year, such as 2026-0042. */
    String next(Change change, String year) {
        return String.format(Locale.ROOT, "%s-%04d", year, step(change, "job " + year));
    }

    /** One more than it was; 1 the first time. */
    int step(Change change, String name) {
        return change.handle()
                .createQuery("insert into counter (garage, name, value) values (:garage, :name, 1)"
                        + " on conflict (garage, name) do update set value = counter.value + 1 returning value")
                .bind("garage", books.garage())
                .bind("name", name)
                .mapTo(Integer.class)
                .one();
    }

    /** As it stands; 0 for one that was never stepped. */
    int now(String name) {
        return books.read(
                handle -> handle.createQuery("select value from counter where garage = :garage and name = :name")
                        .bind("garage", books.garage())
                        .bind("name", name)
                        .mapTo(Integer.class)
                        .findFirst()
                        .orElse(0));
    }
}

package putback.store.books;

import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.mapper.RowMapper;
import putback.store.database.Change;

/** Each car's own sheet, with all that it was before. */
public final class CarSheets {
    private static final RowMapper<CarSheet> ROW = (row, context) -> new CarSheet(
            row.getString("car"),
            row.getInt("number"),
            row.getString("text"),
            row.getString("at"),
            row.getString("by_name"),
            row.getString("why"));
    private static final String SELECT = "select car, number, text, at, by_name, why from car_sheet where car = :car";

    private final Books books;

    public CarSheets(Books books) {
        this.books = books;
    }

    /** The one that holds; nothing for a car that has none. */
    public Optional<CarSheet> current(String car) {
        return books.read(handle -> current(handle, car));
    }

    private static Optional<CarSheet> current(Handle handle, String car) {
        return handle.createQuery(SELECT + " order by number desc limit 1")
                .bind("car", car)
                .map(ROW)
                .findFirst();
    }

    /** All that there were, the newest first. */
    public List<CarSheet> history(String car) {
        return books.read(handle -> handle.createQuery(SELECT + " order by number desc")
                .bind("car", car)
                .map(ROW)
                .list());
    }

    /**
     * Adds one over the number that was read.
     *
     * @param seen number of the sheet it was made from; 0 for none
     */
    public Saved<CarSheet> add(Change change, String car, int seen, String text, String by, String why) {
        Optional<CarSheet> now = current(change.handle(), car);
        int last = now.map(CarSheet::number).orElse(0);
        if (last != seen) {
            return now.<Saved<CarSheet>>map(Saved.Overtaken::new).orElse(new Saved.Gone<>());
        }
        CarSheet added = new CarSheet(car, last + 1, text, books.now(), by, why);
        change.handle()
                .createUpdate("insert into car_sheet (car, number, text, at, by_name, why)"
                        + " values (:car, :number, :text, :at, :by, :why)")
                .bind("car", car)
                .bind("number", added.number())
                .bind("text", text)
                .bind("at", added.at())
                .bind("by", by)
                .bind("why", why)
                .execute();
        change.tell("car:" + car);
        return new Saved.Done<>(added);
    }
}

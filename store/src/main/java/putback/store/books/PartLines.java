package putback.store.books;

import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.mapper.RowMapper;
import putback.store.database.Change;

/** Parts to order and where they are. */
public final class PartLines {
    private static final String SELECT = "select id, job, part, name, count, price, priced_by,"
            + " supplier, state, looked_by, version from part_line where ";
    private static final RowMapper<PartLine> ROW = (row, context) -> new PartLine(
            row.getString("id"),
            row.getString("job"),
            row.getString("part"),
            row.getString("name"),
            row.getInt("count"),
            row.getString("price"),
            row.getString("priced_by"),
            row.getString("supplier"),
            row.getString("state"),
            row.getString("looked_by"),
            row.getInt("version"));

    private final Books books;

    public PartLines(Books books) {
        this.books = books;
    }

    /** Of one job, in the order in which they were put down. */
    public List<PartLine> of(String job) {
        return books.read(handle -> handle.createQuery(SELECT + "job = :job order by id")
                .bind("job", job)
                .map(ROW)
                .list());
    }

    /** Puts one down as to order; its id is given here. */
    public PartLine add(Change change, PartLine line) {
        PartLine kept = new PartLine(
                books.newId(),
                line.job(),
                line.part(),
                line.name(),
                line.count(),
                line.price(),
                line.pricedBy(),
                line.supplier(),
                "to order",
                "",
                1);
        change.handle()
                .createUpdate("insert into part_line (id, job, part, name, count, price, priced_by,"
                        + " supplier, state)"
                        + " values (:id, :job, :part, :name, :count, :price, :pricedBy, :supplier, :state)")
                .bind("id", kept.id())
                .bind("job", kept.job())
                .bind("part", kept.part())
                .bind("name", kept.name())
                .bind("count", kept.count())
                .bind("price", kept.price())
                .bind("pricedBy", kept.pricedBy())
                .bind("supplier", kept.supplier())
                .bind("state", kept.state())
                .execute();
        change.tell("job:" + kept.job());
        return kept;
    }

    /** Keeps supplier, price and state, over the version that was read. */
    public Saved<PartLine> save(Change change, PartLine line) {
        int rows = change.handle()
                .createUpdate("update part_line set price = :price, priced_by = :pricedBy, supplier = :supplier,"
                        + " state = :state, looked_by = :lookedBy, count = :count, version = version + 1"
                        + " where id = :id and job = :job and version = :version")
                .bind("price", line.price())
                .bind("pricedBy", line.pricedBy())
                .bind("lookedBy", line.lookedBy())
                .bind("supplier", line.supplier())
                .bind("state", line.state())
                .bind("count", line.count())
                .bind("id", line.id())
                .bind("job", line.job())
                .bind("version", line.version())
                .execute();
        change.tell("job:" + line.job());
        return Outcome.of(rows, find(change.handle(), line.id()));
    }

    /** Takes one out that nobody ordered. */
    public boolean remove(Change change, PartLine line) {
        change.tell("job:" + line.job());
        return change.handle()
                        .createUpdate("delete from part_line where id = :id and job = :job and version = :version"
                                + " and state = 'to order'")
                        .bind("id", line.id())
                        .bind("job", line.job())
                        .bind("version", line.version())
                        .execute()
                == 1;
    }

    private static Optional<PartLine> find(Handle handle, String id) {
        return handle.createQuery(SELECT + "id = :id").bind("id", id).map(ROW).findFirst();
    }
}

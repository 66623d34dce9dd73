package putback.store.books;

import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.mapper.RowMapper;
import org.jspecify.annotations.Nullable;
import putback.store.database.Change;
import putback.store.sheets.KeptTexts;

/** The garage's own sheets, which stand beside the stock sheets. */
public final class KeptSheets implements KeptTexts {
    private static final RowMapper<KeptSheet> ROW = (row, context) -> new KeptSheet(
            row.getString("id"),
            row.getString("title"),
            row.getString("text"),
            row.getString("at"),
            row.getString("by_name"));
    private static final String SELECT = "select id, title, text, at, by_name from kept_sheet where garage = :garage";

    private final Books books;

    public KeptSheets(Books books) {
        this.books = books;
    }

    /** All, by title. */
    public List<KeptSheet> all() {
        return books.read(handle -> handle.createQuery(SELECT + " order by title, id")
                .bind("garage", books.garage())
                .map(ROW)
                .list());
    }

    /** The one with this id. */
    public Optional<KeptSheet> find(String id) {
        return books.read(handle -> find(handle, id));
    }

    private Optional<KeptSheet> find(Handle handle, String id) {
        return handle.createQuery(SELECT + " and id = :id")
                .bind("garage", books.garage())
                .bind("id", id)
                .map(ROW)
                .findFirst();
    }

    @Override
    public @Nullable String text(String id) {
        return find(id).map(KeptSheet::text).orElse(null);
    }

    /** Keeps one; refused as overtaken where one with its id is there already. */
    public Saved<KeptSheet> add(Change change, String id, String title, String text, String by) {
        Optional<KeptSheet> there = find(change.handle(), id);
        if (there.isPresent()) {
            return new Saved.Overtaken<>(there.get());
        }
        KeptSheet kept = new KeptSheet(id, title, text, books.now(), by);
        change.handle()
                .createUpdate("insert into kept_sheet (garage, id, title, text, at, by_name)"
                        + " values (:garage, :id, :title, :text, :at, :by)")
                .bind("garage", books.garage())
                .bind("id", id)
                .bind("title", title)
                .bind("text", text)
                .bind("at", kept.at())
                .bind("by", by)
                .execute();
        change.tell("sheets");
        return new Saved.Done<>(kept);
    }
}

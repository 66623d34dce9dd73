package putback.store.books;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.mapper.RowMapper;
import org.jspecify.annotations.Nullable;
import putback.store.database.Change;

/** Phones and tablets that stay signed in for longer, and the one-time codes that pair them. */
public final class Devices {
    private static final int CODE_BYTES = 16;
    private static final int SECRET_BYTES = 32;
    private static final String SELECT = "select device.id, device.name, paired_at,"
            + " coalesce(person.name, '') as paired_name, coalesce(ended_at, '') as ended"
            + " from device left join person on person.id = device.paired_by where device.garage = :garage";
    private static final RowMapper<Device> ROW = (row, context) -> new Device(
            row.getString("id"),
            row.getString("name"),
            row.getString("paired_at"),
            row.getString("paired_name"),
            row.getString("ended"));

    /**
     * A device that was just paired.
     *
     * @param secret by which it is known again; kept only there
     */
    public record Paired(String id, String secret) {}

    private final Books books;

    public Devices(Books books) {
        this.books = books;
    }

    /** All, the newest first. */
    public List<Device> all() {
        return books.read(handle -> handle.createQuery(SELECT + " order by paired_at desc, device.id")
                .bind("garage", books.garage())
                .map(ROW)
                .list());
    }

    /** The one that has this secret, as long as it was not ended. */
    public Optional<Device> known(String secret) {
        return books.read(handle -> handle.createQuery(SELECT + " and secret = :secret and ended_at is null")
                .bind("garage", books.garage())
                .bind("secret", Tokens.hash(secret))
                .map(ROW)
                .findFirst());
    }

    /**
     * Makes a code that pairs one device.
     *
     * @return the code, which is kept nowhere
     */
    public String code(Change change, String madeBy, Duration holds) {
        String code = Tokens.make(CODE_BYTES);
        change.handle()
                .createUpdate("insert into pairing (code, garage, made_by, expires_at)"
                        + " values (:code, :garage, :by, :end)")
                .bind("code", Tokens.hash(code))
                .bind("garage", books.garage())
                .bind("by", madeBy)
                .bind("end", Books.text(books.clock().instant().plus(holds)))
                .execute();
        return code;
    }

    /** Whether a code would pair a device now. */
    public boolean holds(String code) {
        return books.read(handle -> handle.createQuery("select count(*) from pairing where garage = :garage"
                                + " and code = :code and used_at is null and expires_at > :now")
                        .bind("garage", books.garage())
                        .bind("code", Tokens.hash(code))
                        .bind("now", books.now())
                        .mapTo(Integer.class)
                        .one())
                > 0;
    }

    /** Pairs a device and uses up the code; null when it does not hold, or somebody else was quicker. */
    public @Nullable Paired pair(Change change, String code, String name, String person) {
        int used = change.handle()
                .createUpdate("update pairing set used_at = :now where garage = :garage and code = :code"
                        + " and used_at is null and expires_at > :now")
                .bind("garage", books.garage())
                .bind("code", Tokens.hash(code))
                .bind("now", books.now())
                .execute();
        if (used == 0) {
            return null;
        }
        Paired paired = new Paired(books.newId(), Tokens.make(SECRET_BYTES));
        change.handle()
                .createUpdate("insert into device (id, garage, name, secret, paired_at, paired_by)"
                        + " values (:id, :garage, :name, :secret, :now, :person)")
                .bind("id", paired.id())
                .bind("garage", books.garage())
                .bind("name", name)
                .bind("secret", Tokens.hash(paired.secret()))
                .bind("now", books.now())
                .bind("person", person)
                .execute();
        return paired;
    }

    /** Ends a device: whoever is signed in there no longer is. */
    public void end(Change change, String id) {
        change.handle()
                .createUpdate("update device set ended_at = :now"
                        + " where garage = :garage and id = :id and ended_at is null")
                .bind("garage", books.garage())
                .bind("id", id)
                .bind("now", books.now())
                .execute();
        new Sessions(books).endAllAt(change, id);
    }
}

package putback.store.books;

import java.time.Duration;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import putback.store.database.Change;

/** Who is signed in where, and for how long still. */
public final class Sessions {
    private static final int BYTES = 32;

    private final Books books;

    public Sessions(Books books) {
        this.books = books;
    }

    /**
     * Starts one.
     *
     * @param device empty when it is at no paired device
     * @return the token, which is kept nowhere
     */
    public String start(Change change, String person, String device, Duration holds) {
        @Nullable String at = device.isEmpty() ? null : device;
        String token = Tokens.make(BYTES);
        change.handle()
                .createUpdate("delete from session where garage = :garage and expires_at <= :now")
                .bind("garage", books.garage())
                .bind("now", books.now())
                .execute();
        change.handle()
                .createUpdate("insert into session (token, garage, person, device, started_at, expires_at)"
                        + " values (:token, :garage, :person, :device, :now, :end)")
                .bind("token", Tokens.hash(token))
                .bind("garage", books.garage())
                .bind("person", person)
                .bind("device", at)
                .bind("now", books.now())
                .bind("end", Books.text(books.clock().instant().plus(holds)))
                .execute();
        return token;
    }

    /** Who signed in with the token, as long as it holds. */
    public Optional<Person> person(String token) {
        return books.read(handle -> handle.createQuery(
                        "select person.id, name, role, password, active from session join person on"
                                + " person.id = session.person where session.garage = :garage and token = :token"
                                + " and expires_at > :now and active = 1")
                .bind("garage", books.garage())
                .bind("token", Tokens.hash(token))
                .bind("now", books.now())
                .map(People.ROW)
                .findFirst());
    }

    /** Ends one. */
    public void end(Change change, String token) {
        change.handle()
                .createUpdate("delete from session where garage = :garage and token = :token")
                .bind("garage", books.garage())
                .bind("token", Tokens.hash(token))
                .execute();
    }

    void endAllOf(Change change, String person) {
        change.handle()
                .createUpdate("delete from session where garage = :garage and person = :person")
                .bind("garage", books.garage())
                .bind("person", person)
                .execute();
    }

    void endAllAt(Change change, String device) {
        change.handle()
                .createUpdate("delete from session where garage = :garage and device = :device")
                .bind("garage", books.garage())
                .bind("device", device)
                .execute();
    }
}

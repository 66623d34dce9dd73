package putback.store.books;

import java.time.Duration;
import java.util.Optional;
import putback.store.database.Change;

/**
 * Addresses that let a customer see one estimate and answer it: not to be guessed, and ended by time. Only hashes are kept:
 * who reads the books cannot answer in a customer's name.
 */
public final class Links {
    private static final int BYTES = 24;

    private final Books books;

    public Links(Books books) {
        this.books = books;
    }

    /**
     * Makes one; earlier ones of the same job end.
     *
     * @return the secret part of the address, which is kept nowhere
     */
    public String make(Change change, String job, Duration holds) {
        String token = Tokens.make(BYTES);
        change.handle()
                .createUpdate("update link set ended_at = :now where job = :job and ended_at = ''")
                .bind("now", books.now())
                .bind("job", job)
                .execute();
        change.handle()
                .createUpdate("insert into link (token, job, made_at, expires_at) values (:token, :job, :now, :end)")
                .bind("token", Tokens.hash(token))
                .bind("job", job)
                .bind("now", books.now())
                .bind("end", Books.text(books.clock().instant().plus(holds)))
                .execute();
        return token;
    }

    /** The job whose estimate it opens, as long as it holds. */
    public Optional<String> job(String token) {
        return books.read(handle -> handle.createQuery("select link.job from link join job on job.id = link.job"
                        + " where job.garage = :garage and token = :token and ended_at = '' and expires_at > :now")
                .bind("garage", books.garage())
                .bind("token", Tokens.hash(token))
                .bind("now", books.now())
                .mapTo(String.class)
                .findFirst());
    }
}

package putback.store.books;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.time.Duration;
import java.util.Base64;
import java.util.HexFormat;
import java.util.Optional;
import putback.store.database.Change;

/** Addresses that let a customer see one estimate and answer it: not to be guessed, and ended by time. */
public final class Links {
    private static final int BYTES = 24;

    private final Books books;
    private final SecureRandom random = new SecureRandom();

    public Links(Books books) {
        this.books = books;
    }

    /**
     * Makes one; earlier ones of the same job end.
     *
     * @return the secret part of the address, which is kept nowhere
     */
    public String make(Change change, String job, Duration holds) {
        byte[] secret = new byte[BYTES];
        random.nextBytes(secret);
        String token = Base64.getUrlEncoder().withoutPadding().encodeToString(secret);
        change.handle()
                .createUpdate("update link set ended_at = :now where job = :job and ended_at = ''")
                .bind("now", books.now())
                .bind("job", job)
                .execute();
        change.handle()
                .createUpdate("insert into link (token, job, made_at, expires_at) values (:token, :job, :now, :end)")
                .bind("token", hash(token))
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
                .bind("token", hash(token))
                .bind("now", books.now())
                .mapTo(String.class)
                .findFirst());
    }

    /** Only the hash is kept: who reads the books cannot answer in a customer's name. */
    static String hash(String token) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(token.getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(digest);
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException(impossible);
        }
    }
}

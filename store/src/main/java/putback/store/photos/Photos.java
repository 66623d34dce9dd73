package putback.store.photos;

import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.mapper.RowMapper;
import putback.store.books.Books;
import putback.store.database.Change;

/** The photos of the jobs. */
public final class Photos {
    private static final String SELECT =
            "select photo.id, photo.job, hash, type, bytes, words, at, by_name from photo ";
    private static final RowMapper<Photo> ROW = (row, context) -> new Photo(
            row.getString("id"),
            row.getString("job"),
            row.getString("hash"),
            row.getString("type"),
            row.getInt("bytes"),
            row.getString("words"),
            row.getString("at"),
            row.getString("by_name"));

    private final Books books;
    private final PhotoFiles files;

    public Photos(Books books, PhotoFiles files) {
        this.books = books;
        this.files = files;
    }

    /** Of one job, in the order in which they came. */
    public List<Photo> of(String job) {
        return books.database().read(handle -> handle.createQuery(SELECT + "where job = :job order by at, id")
                .bind("job", job)
                .map(ROW)
                .list());
    }

    /** One of this garage. */
    public Optional<Photo> find(String id) {
        return books.database().read(handle -> handle.createQuery(
                        SELECT + "join job on job.id = photo.job where photo.id = :id and job.garage = :garage")
                .bind("id", id)
                .bind("garage", books.garage())
                .map(ROW)
                .findFirst());
    }

    /** Its file; nothing when that is gone. */
    public Optional<byte[]> file(Photo photo) {
        return files.read(photo.hash());
    }

    /**
     * Strips a picture and keeps it with a job of this garage. The file is on disk before the row is, so that no row is without one.
     *
     * @param words what is seen on it, may be empty
     */
    public Added add(String job, byte[] picture, String words, String by) {
        Stripped stripped = Stripping.strip(picture);
        if (stripped instanceof Stripped.Refused refused) {
            return new Added.Refused(refused.said());
        }
        Stripped.Picture kept = (Stripped.Picture) stripped;
        String hash = files.keep(kept.file());
        return books.write(change -> {
            if (!isHere(change, job)) {
                return new Added.Refused("There is no such job, so the photo is not kept.");
            }
            Photo photo = new Photo(
                    books.newId(), job, hash, kept.type().media(), kept.file().length, words, books.now(), by);
            insert(change, photo);
            return new Added.Kept(photo);
        });
    }

    private boolean isHere(Change change, String job) {
        return change.handle()
                .createQuery("select 1 from job where id = :job and garage = :garage")
                .bind("job", job)
                .bind("garage", books.garage())
                .mapTo(Integer.class)
                .findFirst()
                .isPresent();
    }

    private static void insert(Change change, Photo photo) {
        change.handle()
                .createUpdate("insert into photo (id, job, hash, type, bytes, words, at, by_name)"
                        + " values (:id, :job, :hash, :type, :bytes, :words, :at, :by)")
                .bind("id", photo.id())
                .bind("job", photo.job())
                .bind("hash", photo.hash())
                .bind("type", photo.type())
                .bind("bytes", photo.bytes())
                .bind("words", photo.words())
                .bind("at", photo.at())
                .bind("by", photo.byName())
                .execute();
        change.tell("job:" + photo.job());
    }
}

package putback.store.photos;

/**
 * A photo of a job.
 *
 * @param hash SHA-256 of the file that is kept, 64 hexadecimal digits
 * @param type such as image/jpeg
 * @param bytes how long the file is
 */
public record Photo(
        String id, String job, String hash, String type, int bytes, String words, String at, String byName) {}

package putback.store.books;

/**
 * Something found on the car beside the job.
 *
 * @param place such as left front
 * @param words as they are to stand on the paper
 * @param urgency stop driving, soon, watch
 * @param price as a decimal; empty when not known
 * @param answer open, agreed, declined
 * @param answeredBy who said so
 */
public record Finding(
        String id,
        String job,
        String place,
        String words,
        String urgency,
        String price,
        String answer,
        String answeredBy,
        String at,
        String by,
        int version) {
    /** The same as it was read at a version. */
    public Finding at(int seen) {
        return new Finding(id, job, place, words, urgency, price, answer, answeredBy, at, by, seen);
    }
}

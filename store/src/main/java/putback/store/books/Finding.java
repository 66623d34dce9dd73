package putback.store.books;

/**
 * Something found on the car beside the job.
 *
 * @param place such as left front
 * @param words as they are to stand on the paper
 * @param urgency stop driving, soon, watch
 * @param price as a decimal; empty when not known
 * @param answer open, agreed, declined
 * @param answeredBy who wrote the answer down
 * @param said the owner's own words to it; empty where none were written down
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
        String said,
        String at,
        String by,
        int version) {
    /** One that was seen just now and that nobody has answered yet. */
    public static Finding seen(String job, String place, String words, String urgency, String price, String by) {
        return new Finding("", job, place, words, urgency, price, "open", "", "", "", by, 0);
    }

    /** Whether the car must not be driven with it. */
    public boolean stopsDriving() {
        return urgency.equals("stop driving");
    }

    /** The same as it was read at a version. */
    public Finding at(int seen) {
        return new Finding(id, job, place, words, urgency, price, answer, answeredBy, said, at, by, seen);
    }
}

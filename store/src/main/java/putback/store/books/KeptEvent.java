package putback.store.books;

/**
 * An event in its place in the chain of its job.
 *
 * @param number from 1, without gaps
 * @param body one line of JSON
 * @param hash of this one and all before it
 * @param receivedAt when it came in, by this garage's clock
 */
public record KeptEvent(int number, String id, String device, long seq, String body, String hash, String receivedAt) {}

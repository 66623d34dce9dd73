package putback.ledger;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * Who says that something was done, when, and with what it was written down.
 *
 * @param id of the event's own, so that the same event sent twice counts once; null where the file has none
 * @param at when, by the clock of the device; null where the file does not say
 * @param by whom; empty where the file does not say
 * @param device that wrote it; empty where the file does not say
 * @param seq running number on that device, from 1; null where the file does not say
 */
public record Signature(
        @Nullable String id,
        @Nullable Instant at,
        String by,
        String device,
        @Nullable Long seq) {
    /** Nothing is known of who wrote it. */
    public static final Signature NONE = new Signature(null, null, "", "", null);

    /** A person and a time, nothing else. */
    public static Signature by(String by, @Nullable Instant at) {
        return new Signature(null, at, by, "", null);
    }
}

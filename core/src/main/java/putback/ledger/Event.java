package putback.ledger;

import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;
import putback.sheet.Height;

/**
 * One thing that was done. What does not belong to it is null or empty.
 *
 * @param with parts that moved in one piece with the part
 * @param torqueNm read at the wrench, 0 or more
 * @param angleDeg turned further
 * @param wrench that it was tightened with, as the toolbox calls it
 * @param untorqued why it was tightened without a figure
 * @param reason why something stays open, or was written down by mistake
 * @param corrects id of the event that was written down by mistake
 */
public record Event(
        Signature signature,
        Did did,
        @Nullable String joint,
        @Nullable String part,
        List<String> with,
        @Nullable String aid,
        @Nullable String followUp,
        @Nullable Height height,
        @Nullable Double torqueNm,
        @Nullable Double angleDeg,
        @Nullable String wrench,
        @Nullable String untorqued,
        @Nullable String reason,
        @Nullable String corrects) {
    public Event {
        with = List.copyOf(with);
    }

    /** Its own id; null where the file has none. */
    public @Nullable String id() {
        return signature.id();
    }

    /** When; null where the file does not say. */
    public @Nullable Instant at() {
        return signature.at();
    }

    /** By whom; empty where the file does not say. */
    public String by() {
        return signature.by();
    }
}

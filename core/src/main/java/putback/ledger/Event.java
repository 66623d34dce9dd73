package putback.ledger;

import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;
import putback.sheet.Height;

/**
 * One thing that was done. What does not belong to it is null or empty.
 *
 * @param id of its own, so that the same event sent twice counts once; null where the file has none
 * @param at when; null where the file does not say
 * @param by whom; empty where the file does not say
 * @param with parts that moved in one piece with the part
 * @param torqueNm read at the wrench, 0 or more
 * @param angleDeg turned further
 * @param untorqued why it was tightened without a figure
 * @param reason why something stays open
 */
public record Event(
        @Nullable String id,
        @Nullable Instant at,
        String by,
        Did did,
        @Nullable String joint,
        @Nullable String part,
        List<String> with,
        @Nullable String aid,
        @Nullable String followUp,
        @Nullable Height height,
        @Nullable Double torqueNm,
        @Nullable Double angleDeg,
        @Nullable String untorqued,
        @Nullable String reason) {
    public Event {
        with = List.copyOf(with);
    }
}

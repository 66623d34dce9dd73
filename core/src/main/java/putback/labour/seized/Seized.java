package putback.labour.seized;

import java.math.BigDecimal;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import putback.quantity.Parsed;

/**
 * A fastener that will not move, and what could be tried on it.
 *
 * @param ratePerHour price of an hour's work, more than 0
 * @param attempts one or more, in any order
 * @param refusal which way it refuses; null when that is not said, and every attempt is a candidate
 * @param nearby what must not get flame, hot metal, sparks or blows
 */
public record Seized(
        BigDecimal ratePerHour,
        List<Attempt> attempts,
        @Nullable Refusal refusal,
        List<Nearby> nearby) {
    public Seized {
        attempts = List.copyOf(attempts);
        nearby = List.copyOf(nearby);
    }

    /** The row of attempts with the least expected cost, or why the question has no answer. */
    public Parsed<Row> answer() {
        String wrong = wrong();
        return wrong.isEmpty() ? new Parsed.Value<>(Ordering.row(this)) : new Parsed.Refused<>(wrong);
    }

    private String wrong() {
        if (ratePerHour.signum() <= 0) {
            return "a rate of " + ratePerHour.toPlainString() + " an hour orders nothing; it has to be more than 0";
        }
        if (attempts.isEmpty()) {
            return "there is no resort to choose from; name at least one";
        }
        Set<String> ids = new HashSet<>();
        for (Attempt attempt : attempts) {
            String fault = wrong(attempt);
            if (fault.isEmpty() && !ids.add(attempt.id())) {
                fault = "is named twice; keep one of them";
            }
            if (!fault.isEmpty()) {
                return "resort " + attempt.id() + " " + fault;
            }
        }
        return "";
    }

    private static String wrong(Attempt attempt) {
        if (!isShare(attempt.chance()) || !isShare(attempt.breakChance())) {
            return "has a chance that is not from 0 to 1";
        }
        return attempt.minutes().millionths() < 0
                        || attempt.breakPrice().signum() < 0
                        || attempt.scraps().signum() < 0
                ? "has a time or price below 0"
                : "";
    }

    private static boolean isShare(BigDecimal chance) {
        return chance.signum() >= 0 && chance.compareTo(BigDecimal.ONE) <= 0;
    }
}

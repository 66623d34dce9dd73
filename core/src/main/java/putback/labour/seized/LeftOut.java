package putback.labour.seized;

import java.util.List;

/**
 * An attempt that is not in the row.
 *
 * @param reasons why not, each half a sentence, one or more; of several what cannot be put aside comes first
 * @param banned whether it would do harm here, and not only cost too much or answer nothing
 */
public record LeftOut(Attempt attempt, List<String> reasons, boolean banned) {
    public LeftOut {
        reasons = List.copyOf(reasons);
    }

    LeftOut(Attempt attempt, String reason) {
        this(attempt, List.of(reason), false);
    }

    /** All reasons in one line. */
    public String because() {
        return String.join("; ", reasons);
    }
}

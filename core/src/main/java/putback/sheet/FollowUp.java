package putback.sheet;

import java.util.List;
import org.jspecify.annotations.Nullable;
import putback.quantity.Minutes;

/**
 * Work that opening a joint brings with it; done once however many joints bring it.
 *
 * @param source who says that it is needed; null when nobody
 * @param height at which it is done
 * @param follows follow-ups that come before this one if they are due too
 */
public record FollowUp(
        String id,
        String name,
        Minutes minutes,
        boolean critical,
        Height height,
        List<String> follows,
        @Nullable String source) {
    public FollowUp {
        follows = List.copyOf(follows);
    }
}

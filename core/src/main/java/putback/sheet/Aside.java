package putback.sheet;

import java.util.List;
import org.jspecify.annotations.Nullable;
import putback.quantity.Minutes;

/**
 * How a part may be moved out of the way instead of coming off.
 *
 * @param open joints that have to be open first, as written
 * @param aid what keeps it there; null for nothing
 */
public record Aside(
        List<String> open, Minutes minutes, @Nullable String aid) {
    public Aside {
        open = List.copyOf(open);
    }
}

package putback.sheet;

import org.jspecify.annotations.Nullable;
import putback.quantity.Length;

/**
 * What makes a part flexible.
 *
 * @param free free length, or null when not known
 * @param plunge how far a shaft may be drawn out, or null when not known
 */
public record Tether(
        TetherKind kind, @Nullable Length free, @Nullable Length plunge) {}

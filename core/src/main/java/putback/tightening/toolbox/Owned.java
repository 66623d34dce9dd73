package putback.tightening.toolbox;

import org.jspecify.annotations.Nullable;
import putback.quantity.Length;

/**
 * A tool that is in the toolbox.
 *
 * @param drive its square, such as 1/2 in; null where it has none or nobody said
 * @param reach of a crowfoot adapter, from the middle of the drive to the middle of the fastener; null for others
 */
public record Owned(
        Tool tool, @Nullable Length drive, @Nullable Length reach) {}

package putback.store.backup;

import org.jspecify.annotations.Nullable;

/**
 * What was restored.
 *
 * @param rows of all books
 * @param photos how many
 * @param old where the books lie that were there before; null where there were none
 */
public record Restored(long rows, int photos, @Nullable String old) {}

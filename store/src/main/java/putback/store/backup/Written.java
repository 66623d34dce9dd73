package putback.store.backup;

import java.util.List;

/**
 * What a backup holds.
 *
 * @param rows of all books
 * @param photos how many
 * @param missing photos that the books name and whose files are gone or altered, in words
 */
public record Written(long rows, int photos, List<String> missing) {
    public Written {
        missing = List.copyOf(missing);
    }
}

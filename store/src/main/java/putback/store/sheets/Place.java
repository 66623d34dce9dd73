package putback.store.sheets;

/**
 * A place in a file.
 *
 * @param file as the user named it
 * @param line from 1
 * @param column from 1, in characters
 */
public record Place(String file, int line, int column) {
    static Place startOf(String file) {
        return new Place(file, 1, 1);
    }
}

package putback.store.sheets;

import java.util.Comparator;
import putback.quantity.Shown;

/**
 * What is wrong with a sheet, and where. Prints itself as the one line that other programs may rely on.
 *
 * @param line from 1
 * @param column from 1
 * @param message one line: what is wrong, and what would be right
 */
public record Fault(String file, int line, int column, String message) implements Comparable<Fault> {
    private static final int LONGEST = 400;
    private static final Comparator<Fault> ORDER = Comparator.comparing(Fault::file)
            .thenComparingInt(Fault::line)
            .thenComparingInt(Fault::column)
            .thenComparing(Fault::message);

    public Fault {
        file = oneLine(file);
        message = oneLine(message);
    }

    static Fault at(Place place, String message) {
        return new Fault(place.file(), place.line(), place.column(), message);
    }

    Place place() {
        return new Place(file, line, column);
    }

    private static String oneLine(String text) {
        StringBuilder line = new StringBuilder();
        text.codePoints().limit(LONGEST).forEach(c -> line.appendCodePoint(Shown.isHarmless(c) ? c : '?'));
        return line.toString();
    }

    @Override
    public int compareTo(Fault other) {
        return ORDER.compare(this, other);
    }

    /** {@code FILE:LINE:COLUMN: what is wrong, and what would be right}. */
    @Override
    public String toString() {
        return file + ":" + line + ":" + column + ": " + message;
    }
}

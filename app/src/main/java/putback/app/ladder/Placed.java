package putback.app.ladder;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A row with its place on the sheet.
 *
 * @param line where its rung or mark is
 * @param areaLeft from here on text may stand
 * @param areaRight up to here
 * @param name lines above the rung, in the middle
 * @param left lines at the left end, under the rung, or about the line where there is none
 * @param right the same at the right end
 * @param below lines in the middle under all of them
 */
record Placed(
        Row row,
        double top,
        double line,
        double bottom,
        double bankLeft,
        double bankRight,
        double areaLeft,
        double areaRight,
        List<String> name,
        List<String> left,
        List<String> right,
        List<String> below) {
    @Nullable
    Cell leftCell() {
        return row.left();
    }

    @Nullable
    Cell rightCell() {
        return row.right();
    }
}

package putback.sheet;

import java.util.List;

/**
 * What is wrong with a sheet, and where in it.
 *
 * @param path keys from the top of the sheet, list positions as plain numbers: {@code [joints, top-nut, behind, 0]}
 * @param message names the thing, its value, and what would be right
 */
public record SheetFault(List<String> path, String message) {
    public SheetFault {
        path = List.copyOf(path);
    }
}

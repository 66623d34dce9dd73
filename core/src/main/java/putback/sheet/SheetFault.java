package putback.sheet;

import java.util.List;

/**
 * What is wrong with a sheet, and where in it.
 *
 * @param path keys from the top of the sheet, list positions as plain numbers: {@code [joints, top-nut, behind, 0]}
 * @param message names the thing, its value, and what would be right
 * @param missing section and id of what is named and not there, such as {@code parts/left.strut}; empty for another fault
 */
public record SheetFault(List<String> path, String message, String missing) {
    public SheetFault {
        path = List.copyOf(path);
    }

    public SheetFault(List<String> path, String message) {
        this(path, message, "");
    }
}

package putback.sheet;

import java.util.List;

/**
 * One car as a sheet describes it: both sides exist, every reference is an index.
 *
 * @param sheet where it came from
 * @param parts in the order of the sheet, left before right; the first is the body
 * @param joints in the order of the sheet, left before right
 * @param units in the order of the sheet, left before right
 */
public record Assembly(Sheet sheet, List<Part> parts, List<Joint> joints, List<Unit> units) {
    public Assembly {
        parts = List.copyOf(parts);
        joints = List.copyOf(joints);
        units = List.copyOf(units);
    }

    /** Stands a sheet up on one car, or says everything that is wrong with its references. */
    public static Assembled of(Sheet sheet) {
        return new Assembler(sheet).assemble();
    }

    public Part body() {
        return parts.get(0);
    }

    public boolean sided() {
        return sheet.sided();
    }
}

package putback.sheet;

import java.util.List;

/**
 * Parts of one car that are renewed in one piece.
 *
 * @param index its place in {@link Assembly#units()}
 * @param parts indices of its parts
 */
public record Unit(int index, String id, Side side, UnitEntry entry, List<Integer> parts) {
    public Unit {
        parts = List.copyOf(parts);
    }

    public String name() {
        return Naming.sided(side, entry.name());
    }
}

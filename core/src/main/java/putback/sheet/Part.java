package putback.sheet;

import java.util.List;

/**
 * A part of one car.
 *
 * @param index its place in {@link Assembly#parts()}; 0 is the body
 * @param id with its side, such as {@code left.strut}
 * @param asideOpens joints that have to be open before it can be moved aside; empty also when it cannot
 */
public record Part(int index, String id, Side side, PartEntry entry, List<Integer> asideOpens) {
    public Part {
        asideOpens = List.copyOf(asideOpens);
    }

    public boolean isBody() {
        return index == 0;
    }

    public boolean isTether() {
        return entry.tether() != null;
    }

    public boolean canGoAside() {
        return entry.aside() != null;
    }

    /** What it is called on pages: {@code Strut, left}. */
    public String name() {
        return Naming.sided(side, entry.name());
    }
}

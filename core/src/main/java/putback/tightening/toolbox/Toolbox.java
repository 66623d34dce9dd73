package putback.tightening.toolbox;

import java.util.List;
import org.jspecify.annotations.Nullable;
import putback.quantity.Length;

/**
 * What a garage has.
 *
 * @param tools by size
 * @param kept tools without a size: bits, levers, pullers
 * @param aids what stands, lifts, ties or holds, with its rating
 */
public record Toolbox(
        String id,
        String title,
        Interval interval,
        List<Owned> tools,
        List<Kept> kept,
        List<Kept> aids,
        List<TorqueWrench> wrenches) {
    public Toolbox {
        tools = List.copyOf(tools);
        kept = List.copyOf(kept);
        aids = List.copyOf(aids);
        wrenches = List.copyOf(wrenches);
    }

    /** The first of a form and size; null when there is none. */
    public @Nullable Owned owned(ToolForm form, Length size) {
        for (Owned owned : tools) {
            if (owned.tool().form() == form && owned.tool().isSize(size)) {
                return owned;
            }
        }
        return null;
    }

    /** How many sockets of a size there are, pass-through ones and those of another system that fit included. */
    public int count(Length size) {
        int count = 0;
        Tool wanted = new Tool(ToolForm.SOCKET, size);
        for (Owned owned : tools) {
            boolean socket =
                    owned.tool().form() == ToolForm.SOCKET || owned.tool().form() == ToolForm.PASS_THROUGH;
            count += socket && Substitutes.fits(owned.tool(), wanted) ? 1 : 0;
        }
        return count;
    }

    /** What a plan calls so among the tools without a size; null when there is none. */
    public @Nullable Kept kept(String name) {
        return named(kept, name);
    }

    /** What a plan calls so among the aids; null when there is none. */
    public @Nullable Kept aid(String name) {
        return named(aids, name);
    }

    private static @Nullable Kept named(List<Kept> among, String name) {
        for (Kept one : among) {
            if (one.name().equalsIgnoreCase(name)) {
                return one;
            }
        }
        return null;
    }
}

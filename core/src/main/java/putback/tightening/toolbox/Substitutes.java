package putback.tightening.toolbox;

import org.jspecify.annotations.Nullable;

/** What would do in place of a tool that is not there. Common practice, no source. */
final class Substitutes {
    /** A wrench of another system goes on and does not round: this much smaller to this much larger, in mm. */
    private static final double SMALLER_MM = 0.08;

    private static final double LARGER_MM = 0.15;

    /** No more than this share of the size, or it rounds a small hexagon. */
    private static final double LARGER_SHARE = 0.012;

    private Substitutes() {}

    /** In words; null when nothing of the toolbox would do. */
    static @Nullable String of(Toolbox toolbox, Tool wanted) {
        Owned near = near(toolbox, wanted);
        if (near != null) {
            return "the " + near.tool().text() + " fits too";
        }
        return switch (wanted.form()) {
            case SOCKET ->
                toolbox.owned(ToolForm.PASS_THROUGH, wanted.size()) != null
                        ? "the " + other(wanted, ToolForm.PASS_THROUGH)
                        : toolbox.owned(ToolForm.SPANNER, wanted.size()) == null
                                ? null
                                : "the " + other(wanted, ToolForm.SPANNER) + ", where a socket need not reach";
            case SPANNER ->
                toolbox.owned(ToolForm.PASS_THROUGH, wanted.size()) != null
                        ? "the " + other(wanted, ToolForm.PASS_THROUGH)
                        : toolbox.owned(ToolForm.SOCKET, wanted.size()) == null
                                ? null
                                : "the " + other(wanted, ToolForm.SOCKET)
                                        + " with a ratchet, where there is room for it";
            case FLARE_SPANNER, CROWFOOT, HEX_KEY, PASS_THROUGH -> null;
        };
    }

    private static @Nullable Owned near(Toolbox toolbox, Tool wanted) {
        if (wanted.form() == ToolForm.HEX_KEY) {
            return null;
        }
        for (Owned owned : toolbox.tools()) {
            if (owned.tool().form() == wanted.form() && fits(owned.tool(), wanted)) {
                return owned;
            }
        }
        return null;
    }

    /** Whether a tool's size goes on what the wanted one goes on. */
    static boolean fits(Tool tool, Tool wanted) {
        double larger = tool.size().millimetres() - wanted.size().millimetres();
        return larger >= -SMALLER_MM
                && larger <= Math.min(LARGER_MM, LARGER_SHARE * wanted.size().millimetres());
    }

    private static String other(Tool wanted, ToolForm form) {
        return new Tool(form, wanted.size()).text();
    }
}

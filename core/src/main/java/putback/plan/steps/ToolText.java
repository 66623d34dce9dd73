package putback.plan.steps;

import org.jspecify.annotations.Nullable;
import putback.quantity.Length;
import putback.sheet.Fastener;
import putback.sheet.Holding;
import putback.sheet.Joint;
import putback.sheet.JointKind;

/** What a tool is called, and when two steps use the same one. */
final class ToolText {
    static final String HAND = "hand";

    private ToolText() {}

    /**
     * Such as {@code 19 mm socket}, {@code 11 mm flare spanner} or {@code hand}. Where a key through the middle holds the
     * other side a spanner turns it: a socket would cover the key.
     */
    static String tool(Joint joint, Fastener fastener) {
        String named = joint.entry().tool();
        if (named != null) {
            return named;
        }
        Length hex = fastener.hex();
        if (hex == null) {
            return HAND;
        }
        if (joint.entry().kind() == JointKind.UNION) {
            return hex.acrossFlats() + " flare spanner";
        }
        return hex.acrossFlats() + (fastener.hold() instanceof Holding.ByKey ? " spanner" : " socket");
    }

    /** Equal for two steps between which no tool is changed; empty for bare hands, which change nothing. */
    static String key(Joint joint, Fastener fastener) {
        String named = joint.entry().tool();
        @Nullable Length hex = fastener.hex();
        String key = named != null ? named : hex != null ? hex.acrossFlats() : "";
        return key.equals(HAND) ? "" : key;
    }

    /** Such as {@code 18 mm spanner}; empty where nothing needs holding. */
    static String hold(Fastener fastener) {
        Holding hold = fastener.hold();
        if (hold instanceof Holding.ByHex hex) {
            return hex.size().acrossFlats() + " spanner";
        }
        return hold instanceof Holding.ByKey key ? key.size().acrossFlats() + " hex key" : "";
    }
}

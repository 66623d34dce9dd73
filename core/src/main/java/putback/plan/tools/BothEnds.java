package putback.plan.tools;

import java.util.List;
import org.jspecify.annotations.Nullable;
import putback.plan.ToolUse;
import putback.tightening.toolbox.Have;
import putback.tightening.toolbox.Tool;
import putback.tightening.toolbox.ToolForm;
import putback.tightening.toolbox.Toolbox;

/** A socket that turns one side of a fastener cannot hold the other. */
final class BothEnds {
    private BothEnds() {}

    /** Whether the toolbox has a tool, what stands in for it not being at the other end at the same step. */
    static Have judged(Toolbox toolbox, ToolUse use, List<ToolUse> all) {
        Have have = Have.tool(toolbox, use.tool());
        Tool wanted = Tool.named(use.tool());
        if (have.state() != Have.State.INSTEAD || wanted == null || wanted.form() != ToolForm.SPANNER) {
            return have;
        }
        String socket = new Tool(ToolForm.SOCKET, wanted.size()).text();
        ToolUse other = find(all, socket);
        boolean together = other != null && meets(use.steps(), other.steps());
        return together && toolbox.count(wanted.size()) < 2
                ? new Have(Have.State.MISSING, "the only " + socket + " is on the other end")
                : have;
    }

    private static @Nullable ToolUse find(List<ToolUse> all, String name) {
        for (ToolUse use : all) {
            if (use.tool().equals(name)) {
                return use;
            }
        }
        return null;
    }

    private static boolean meets(List<Integer> one, List<Integer> other) {
        for (int step : one) {
            if (other.contains(step)) {
                return true;
            }
        }
        return false;
    }
}

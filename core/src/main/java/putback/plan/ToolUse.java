package putback.plan;

import java.util.List;

/**
 * A tool with the steps that need it.
 *
 * @param tool such as {@code 19 mm socket}
 * @param steps numbers of steps, rising
 */
public record ToolUse(String tool, List<Integer> steps) {
    public ToolUse {
        steps = List.copyOf(steps);
    }
}

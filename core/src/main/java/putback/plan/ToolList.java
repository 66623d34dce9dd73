package putback.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import putback.plan.steps.Step;

/** What has to be on the trolley. */
public final class ToolList {
    private static final String HAND = "hand";

    private ToolList() {}

    /** Each tool and holding tool with the steps that need it, sorted by first use; bare hands are no tool. */
    public static List<ToolUse> of(List<Step> steps) {
        Map<String, List<Integer>> uses = new LinkedHashMap<>();
        for (Step step : steps) {
            for (String tool : List.of(step.tool(), step.hold())) {
                if (!tool.isEmpty() && !tool.equals(HAND)) {
                    List<Integer> numbers = uses.get(tool);
                    if (numbers == null) {
                        numbers = new ArrayList<>();
                        uses.put(tool, numbers);
                    }
                    if (!numbers.contains(step.number())) {
                        numbers.add(step.number());
                    }
                }
            }
        }
        List<ToolUse> tools = new ArrayList<>();
        for (Map.Entry<String, List<Integer>> use : uses.entrySet()) {
            tools.add(new ToolUse(use.getKey(), use.getValue()));
        }
        return List.copyOf(tools);
    }
}

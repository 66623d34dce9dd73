package putback.plan.tools;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import putback.plan.Plan;
import putback.plan.ToolUse;
import putback.plan.steps.Step;
import putback.sheet.Fastener;
import putback.sheet.Holding;
import putback.tightening.toolbox.Have;
import putback.tightening.toolbox.Task;
import putback.tightening.toolbox.Tightened;
import putback.tightening.toolbox.Toolbox;
import putback.tightening.toolbox.WrenchChoice;

/**
 * What is laid out for a plan.
 *
 * @param tools in the order of first use
 * @param aids in the order of first use
 * @param wrenches by the number of the step that tightens to a torque
 */
public record Tray(List<TrayTool> tools, List<TrayAid> aids, Map<Integer, Tightened> wrenches) {
    public Tray {
        tools = List.copyOf(tools);
        aids = List.copyOf(aids);
        wrenches = Collections.unmodifiableMap(new TreeMap<>(wrenches));
    }

    /**
     * Holds a plan against a toolbox.
     *
     * @param on the day of the work, by which calibration is judged
     */
    public static Tray of(Plan plan, Toolbox toolbox, LocalDate on) {
        List<TrayTool> tools = new ArrayList<>();
        for (ToolUse use : plan.tools()) {
            tools.add(new TrayTool(use, BothEnds.judged(toolbox, use, plan.tools())));
        }
        WrenchChoice choice = new WrenchChoice(toolbox, on);
        Map<Integer, Tightened> wrenches = new TreeMap<>();
        for (Step step : plan.steps()) {
            Task task = task(step);
            if (task != null) {
                wrenches.put(step.number(), choice.of(task));
            }
        }
        return new Tray(tools, Aids.of(plan.steps(), toolbox), wrenches);
    }

    private static @Nullable Task task(Step step) {
        Limits limits = Limits.of(step);
        Fastener fastener = step.fastener();
        return limits == null || fastener == null
                ? null
                : new Task(
                        step.tool(),
                        limits.torque(),
                        limits.least(),
                        limits.most(),
                        limits.angle(),
                        fastener.hold() instanceof Holding.ByKey,
                        fastener.leftHanded());
    }

    /** The torque wrenches that are laid out, in the order of first use. */
    public List<WrenchUse> wrenchUses() {
        return WrenchUse.of(wrenches);
    }

    /** Steps that tighten to a torque for which there is no wrench, rising. */
    public List<Integer> untorqued() {
        List<Integer> steps = new ArrayList<>();
        for (Map.Entry<Integer, Tightened> entry : wrenches.entrySet()) {
            if (entry.getValue() instanceof Tightened.Untorqued) {
                steps.add(entry.getKey());
            }
        }
        return List.copyOf(steps);
    }

    /** Names of the tools and aids that are not there, with nothing in their place. */
    public List<String> missing() {
        List<String> missing = new ArrayList<>();
        for (TrayTool tool : tools) {
            if (tool.have().state() == Have.State.MISSING) {
                missing.add(tool.use().tool());
            }
        }
        for (TrayAid aid : aids) {
            if (aid.have().state() == Have.State.MISSING) {
                missing.add(aid.atOnce() > 1 ? aid.atOnce() + " x " + aid.name() : aid.name());
            }
        }
        return List.copyOf(missing);
    }
}

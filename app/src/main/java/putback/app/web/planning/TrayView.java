package putback.app.web.planning;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import putback.app.text.TrayText;
import putback.app.tools.ToolShape;
import putback.plan.Plan;
import putback.plan.ToolUse;
import putback.plan.tools.Tray;
import putback.plan.tools.TrayAid;
import putback.plan.tools.TrayTool;
import putback.plan.tools.WrenchUse;
import putback.tightening.toolbox.Have;

/**
 * The tools of a plan as they lie in a tray: each in its cut-out, drawn to size, in the order of first use. A tool that is
 * not there leaves its cut-out empty.
 *
 * @param known whether there is a toolbox to hold them against
 * @param summary what the tray lacks, in words; empty without a toolbox
 */
public record TrayView(boolean known, String summary, List<Place> tools, List<Place> wrenches, List<Place> aids) {
    public TrayView {
        tools = List.copyOf(tools);
        wrenches = List.copyOf(wrenches);
        aids = List.copyOf(aids);
    }

    /**
     * One cut-out.
     *
     * @param state {@code yes}, {@code instead} or {@code no}
     * @param said what is to be said of it; empty where nothing is
     * @param drawn SVG
     */
    public record Place(String name, String state, String said, List<Integer> steps, String drawn) {
        public Place {
            steps = List.copyOf(steps);
        }
    }

    static TrayView of(Plan plan, @Nullable Tray tray) {
        List<Place> tools = new ArrayList<>();
        List<Place> aids = new ArrayList<>();
        if (tray == null) {
            for (ToolUse use : plan.tools()) {
                tools.add(place(use.tool(), new Have(Have.State.THERE, ""), use.steps()));
            }
            return new TrayView(false, "", tools, List.of(), aids);
        }
        for (TrayTool tool : tray.tools()) {
            tools.add(place(tool.use().tool(), tool.have(), tool.use().steps()));
        }
        for (TrayAid aid : tray.aids()) {
            aids.add(place(aid.atOnce() > 1 ? aid.atOnce() + " x " + aid.name() : aid.name(), aid.have(), aid.steps()));
        }
        return new TrayView(true, TrayText.summary(tray), tools, wrenches(tray), aids);
    }

    private static List<Place> wrenches(Tray tray) {
        List<Place> places = new ArrayList<>();
        for (WrenchUse use : tray.wrenchUses()) {
            String due = use.due().isEmpty() ? "" : "; due for calibration: " + String.join("; ", use.due());
            Have.State state = use.due().isEmpty() ? Have.State.THERE : Have.State.INSTEAD;
            places.add(new Place(
                    use.wrench().text(),
                    state.word(),
                    use.wrench().rangeText() + due,
                    use.steps(),
                    ToolShape.draw("torque wrench", state)));
        }
        if (!tray.untorqued().isEmpty()) {
            Have.State none = Have.State.MISSING;
            places.add(new Place(
                    "no wrench that serves",
                    none.word(),
                    "tightened, not torqued: said so at each step",
                    tray.untorqued(),
                    ToolShape.draw("torque wrench", none)));
        }
        return places;
    }

    private static Place place(String name, Have have, List<Integer> steps) {
        String said =
                switch (have.state()) {
                    case THERE -> have.remark();
                    case INSTEAD -> "not there: " + have.remark();
                    case MISSING -> have.remark().isEmpty() ? "missing" : "missing: " + have.remark();
                };
        return new Place(name, have.state().word(), said, steps, ToolShape.draw(name, have.state()));
    }
}

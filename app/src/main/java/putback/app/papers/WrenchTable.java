package putback.app.papers;

import java.util.ArrayList;
import java.util.List;
import putback.app.papers.Block.Column;
import putback.app.papers.Block.Row;
import putback.app.text.WrenchText;
import putback.plan.Plan;
import putback.plan.steps.Step;
import putback.plan.tools.Limits;
import putback.plan.tools.Tray;
import putback.sheet.Joint;

/** With which of the garage's wrenches each fixing is tightened, set to what. */
final class WrenchTable {
    private WrenchTable() {}

    static Block.Table of(Plan plan, Tray tray, HouseStyle style) {
        List<Row> rows = new ArrayList<>();
        for (Step step : plan.steps()) {
            Limits limits = Limits.of(step);
            Joint joint = step.joint();
            if (limits != null && joint != null) {
                List<String> lines = new ArrayList<>();
                for (String line : WrenchText.lines(limits, tray.wrenches().get(step.number()))) {
                    lines.add(style.words(line));
                }
                rows.add(Row.Cells.of(
                        Cell.of("" + step.number()),
                        Cell.of(joint.name()),
                        Cell.of(lines.get(0), lines.subList(1, lines.size()))));
            }
        }
        return new Block.Table(
                List.of(
                        new Column("Step", 7, false),
                        new Column("Fixing", 28, false),
                        new Column("Wrench, what it is set to, what it may show", 65, false)),
                rows,
                true);
    }
}

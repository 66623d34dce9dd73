package putback.app.papers;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import putback.app.ladder.Figures;
import putback.app.papers.Block.Column;
import putback.app.papers.Block.Row;
import putback.plan.PartNeed;
import putback.plan.Plan;
import putback.plan.ToolUse;
import putback.sheet.FollowUp;

/** What a plan needs and brings: parts, tools, follow-ups, each to be ticked. */
final class PlanTables {
    private PlanTables() {}

    /** With their prices, and "not known" where nobody has said one. */
    static Block.Table parts(Plan plan, HouseStyle style) {
        List<Row> rows = new ArrayList<>();
        for (PartNeed need : plan.parts()) {
            BigDecimal price = need.price();
            String reason = need.reason().equals("renew") ? "" : need.reason();
            rows.add(Row.Cells.of(
                    Cell.of("" + need.count()),
                    Cell.of(need.name(), reason.isEmpty() ? List.of() : List.of(reason)),
                    Cell.of(price == null ? FastenerWords.NOT_KNOWN : style.money(price)),
                    Cell.EMPTY,
                    Cell.TICK));
        }
        return new Block.Table(
                List.of(
                        new Column("Count", 8, true),
                        new Column("Part", 45, false),
                        new Column("Price", 15, true),
                        new Column("Part number, make", 24, false),
                        new Column("Here", 8, false)),
                rows,
                true);
    }

    static Block.Table tools(Plan plan) {
        List<Row> rows = new ArrayList<>();
        for (ToolUse use : plan.tools()) {
            rows.add(Row.Cells.of(Cell.of(use.tool()), Cell.of(steps(use.steps())), Cell.TICK));
        }
        return new Block.Table(
                List.of(new Column("Tool", 36, false), new Column("In steps", 56, false), new Column("Here", 8, false)),
                rows,
                true);
    }

    private static String steps(List<Integer> numbers) {
        List<String> steps = new ArrayList<>();
        for (int number : numbers) {
            steps.add("" + number);
        }
        return String.join(", ", steps);
    }

    static Block.Table followUps(Plan plan, HouseStyle style) {
        List<Row> rows = new ArrayList<>();
        for (FollowUp one : plan.selection().followUps()) {
            String source = one.source();
            rows.add(Row.Cells.of(
                    Cell.of(
                            one.critical() ? Cell.Mark.TWICE : Cell.Mark.NONE,
                            one.name(),
                            List.of(source == null ? "who asks for it is not given" : "source: " + source)),
                    Cell.of(style.words(Figures.minutes(one.minutes()) + " min")),
                    Cell.TICK,
                    Cell.EMPTY));
        }
        return new Block.Table(
                List.of(
                        new Column("Follow-up", 60, false),
                        new Column("Takes", 12, true),
                        new Column("Done", 8, false),
                        new Column("Result, by whom", 20, false)),
                rows,
                false);
    }
}

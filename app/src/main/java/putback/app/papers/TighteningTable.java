package putback.app.papers;

import java.util.ArrayList;
import java.util.List;
import putback.app.papers.Block.Column;
import putback.app.papers.Block.Row;
import putback.app.papers.Cell.Mark;
import putback.plan.Plan;
import putback.plan.steps.Act;
import putback.plan.steps.Step;
import putback.sheet.Fastener;
import putback.sheet.Joint;
import putback.sheet.Tightening;

/** Everything that is tightened, in the order of the way together, with room for what was read and by whom. */
final class TighteningTable {
    private final HouseStyle style;
    private final FastenerWords words;

    private TighteningTable(HouseStyle style) {
        this.style = style;
        this.words = new FastenerWords(style);
    }

    /** One row for each tightening. */
    static Block.Table of(Plan plan, HouseStyle style) {
        TighteningTable table = new TighteningTable(style);
        List<Row> rows = new ArrayList<>();
        for (Step step : plan.steps()) {
            Joint joint = step.joint();
            Fastener fastener = step.fastener();
            if (step.act() == Act.TIGHTEN && joint != null && fastener != null) {
                rows.add(table.row(step, joint, fastener));
                if (fastener.tightening() instanceof Tightening.TorqueThenAngle then) {
                    rows.add(table.angle(step, joint, then));
                }
            }
        }
        return new Block.Table(table.columns(), rows, false);
    }

    private List<Column> columns() {
        return List.of(
                new Column("Step", 5, false),
                new Column("Fixing", 19, false),
                new Column("Tool, holding tool", 14, false),
                new Column("Torque", 17, false),
                new Column("A reading may be", 16, false),
                new Column("Car stands", 8, false),
                new Column("Seen twice", 6, false),
                new Column("Done", 5, false),
                new Column("Read, " + style.torqueUnit() + "; by", 10, false));
    }

    private Row row(Step step, Joint joint, Fastener fastener) {
        return Row.Cells.of(
                Cell.of("" + step.number()),
                Cell.of(joint.name(), FastenerWords.pieces(fastener)),
                Cell.of(
                        step.tool().equals("hand") ? "by hand" : step.tool(),
                        step.hold().isEmpty() ? List.of() : List.of("held with " + step.hold())),
                Cell.of(words.firstStage(fastener), words.asked(fastener)),
                words.window(step),
                Cell.of(step.height().word()),
                fastener.critical() ? new Cell(Mark.TWICE, "", List.of("by:"), List.of()) : Cell.EMPTY,
                Cell.TICK,
                Cell.of("\u00a0", List.of("by:")));
    }

    /** The angle is a stage of its own: two in one lose clamp load. */
    private Row angle(Step step, Joint joint, Tightening.TorqueThenAngle then) {
        return Row.Cells.of(
                Cell.of("" + step.number()),
                Cell.of(joint.name(), List.of("second stage")),
                Cell.of(step.tool(), step.hold().isEmpty() ? List.of() : List.of("held with " + step.hold())),
                Cell.of("then " + style.words(then.angle().text())),
                Cell.EMPTY,
                Cell.of(step.height().word()),
                Cell.EMPTY,
                Cell.TICK,
                Cell.of("\u00a0", List.of("by:")));
    }
}

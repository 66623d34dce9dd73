package putback.app.papers;

import java.util.ArrayList;
import java.util.List;
import putback.app.ladder.Figures;
import putback.app.papers.Block.Column;
import putback.app.papers.Block.Row;
import putback.plan.Plan;
import putback.plan.steps.Act;
import putback.plan.steps.Step;
import putback.quantity.Length;
import putback.sheet.Fastener;
import putback.sheet.Holding;
import putback.sheet.Joint;

/** What a sheet still lacks, to be written down at the car: each opened joint with what its fastener asks for. */
final class FillInCard {
    private static final List<Column> COLUMNS = List.of(
            new Column("Fixing, in the order it opens", 24, false),
            new Column("Thread, class", 12, false),
            new Column("Turned with", 11, false),
            new Column("Held with", 11, false),
            new Column("Torque and unit, angle", 14, false),
            new Column("Dry, oiled, locker", 9, false),
            new Column("Source of the torque", 12, false),
            new Column("Single-use", 7, false));

    private final FastenerWords words;

    private FillInCard(HouseStyle style) {
        words = new FastenerWords(style);
    }

    static Paper of(Plan plan, JobHead head, HouseStyle style) {
        FillInCard card = new FillInCard(style);
        List<Row> rows = new ArrayList<>();
        for (Step step : plan.steps()) {
            Joint joint = step.joint();
            if (step.act() == Act.UNDO && joint != null) {
                rows.add(card.row(joint));
            }
        }
        List<Block> blocks = new ArrayList<>();
        blocks.add(
                Block.Words.of(
                        "Write down what is on the car and where each figure came from. In small letters: what the sheet says now."));
        blocks.add(
                rows.isEmpty()
                        ? Block.Words.of("Nothing is opened in this job.")
                        : new Block.Table(COLUMNS, rows, false));
        return new Paper(
                Paper.Kind.FILL_IN_CARD, JobCard.title(plan, head), JobCard.renewOn(plan, head), head, style, blocks);
    }

    private Row row(Joint joint) {
        Fastener fastener = joint.fastener();
        if (!joint.entry().kind().threaded()) {
            return Row.Cells.of(
                    Cell.of(joint.name(), List.of(joint.entry().kind().word())), Cell.EMPTY, known(tool(joint)));
        }
        boolean figure = !Figures.secondUnit(fastener).isEmpty();
        String source = fastener.source();
        return Row.Cells.of(
                Cell.of(
                        joint.name(),
                        List.of(fastener.count() + " x " + joint.entry().kind().word())),
                known(FastenerWords.size(fastener)),
                known(tool(joint)),
                known(held(fastener.hold())),
                known(Figures.unknown(fastener) ? "" : words.torque(fastener)),
                known(figure ? fastener.condition().word() : ""),
                known(source == null ? "" : source),
                fastener.singleUse() ? Cell.of(Cell.Mark.BOX, "", List.of("yes")) : Cell.TICK);
    }

    private static Cell known(String said) {
        return Cell.of("\u00a0", List.of(said));
    }

    private static String tool(Joint joint) {
        Length hex = joint.fastener().hex();
        String tool = joint.entry().tool();
        return tool != null ? tool.equals("hand") ? "by hand" : tool : hex == null ? "" : hex.acrossFlats();
    }

    private static String held(Holding holding) {
        if (holding instanceof Holding.ByHex hex) {
            return hex.size().acrossFlats();
        }
        return holding instanceof Holding.ByKey key ? key.size().acrossFlats() + " key" : "";
    }
}

package putback.app.papers;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import putback.app.papers.Block.Column;
import putback.app.papers.Block.Row;
import putback.app.papers.Cell.Mark;
import putback.plan.Plan;
import putback.plan.steps.Act;
import putback.plan.steps.Step;
import putback.plan.tools.Limits;
import putback.quantity.Torque;
import putback.sheet.Fastener;
import putback.sheet.Joint;

/** What was asked for and what was read; lines that nobody has filled in yet are left to a pen. */
final class TighteningRecord {
    private static final List<Column> COLUMNS = List.of(
            new Column("Fixing", 20, false),
            new Column("Asked for", 16, false),
            new Column("A reading may be", 15, false),
            new Column("Read", 13, false),
            new Column("By", 8, false),
            new Column("When", 12, false),
            new Column("Second look by", 8, false),
            new Column("Wrench", 8, false));

    private final HouseStyle style;
    private final FastenerWords words;
    private final Map<String, Reading> readings = new HashMap<>();

    private TighteningRecord(List<Reading> readings, HouseStyle style) {
        this.style = style;
        this.words = new FastenerWords(style);
        for (Reading one : readings) {
            this.readings.put(one.joint(), one);
        }
    }

    static Paper of(Plan plan, List<Reading> readings, JobHead head, HouseStyle style) {
        TighteningRecord made = new TighteningRecord(readings, style);
        List<Row> rows = new ArrayList<>();
        for (Step step : plan.steps()) {
            Joint joint = step.joint();
            Fastener fastener = step.fastener();
            if (step.act() == Act.TIGHTEN && joint != null && fastener != null) {
                rows.add(made.row(step, joint, fastener));
            }
        }
        List<Block> blocks = new ArrayList<>();
        blocks.add(
                rows.isEmpty()
                        ? Block.Words.of("Nothing is tightened in this job.")
                        : new Block.Table(COLUMNS, rows, false));
        blocks.add(Block.Words.of("A diamond: a second look is asked for, by another person or by the same one ten"
                + " minutes later. The limits are those at the fastener."));
        blocks.add(new Block.Fields(List.of(
                new Block.Field("Tightened as written above. Signature", ""),
                new Block.Field("Seen a second time. Signature", ""))));
        return new Paper(
                Paper.Kind.TIGHTENING_RECORD,
                JobCard.title(plan, head),
                JobCard.renewOn(plan, head),
                head,
                style,
                blocks);
    }

    private Row row(Step step, Joint joint, Fastener fastener) {
        Reading reading = readings.get(joint.id());
        List<String> asked = new ArrayList<>(words.asked(fastener));
        asked.add("car: " + step.height().word());
        return Row.Cells.of(
                Cell.of(joint.name(), FastenerWords.pieces(fastener)),
                Cell.of(words.torque(fastener), asked),
                words.window(step),
                read(step, reading),
                Cell.of(reading == null ? "" : reading.by()),
                Cell.of(reading == null ? "" : firm(reading.when())),
                Cell.of(
                        fastener.critical() ? Mark.TWICE : Mark.NONE,
                        reading == null ? "" : reading.secondBy(),
                        List.of()),
                Cell.of(reading == null ? "" : reading.wrench()));
    }

    /** Day and time each in one piece: a break between them, none inside. */
    private static String firm(String when) {
        return when.replace("-", "\u2011");
    }

    private Cell read(Step step, @Nullable Reading reading) {
        if (reading == null) {
            return Cell.of("\u00a0", List.of(style.torqueUnit()));
        }
        Torque read = reading.read();
        Limits limits = Limits.of(step);
        List<String> outside = new ArrayList<>();
        if (read != null && limits != null && outside(read, limits)) {
            outside.add("outside what it may be");
        }
        return new Cell(
                Mark.NONE,
                read == null ? "no torque read" : style.torque(read),
                reading.note().isEmpty() ? List.of() : List.of(reading.note()),
                outside);
    }

    private static boolean outside(Torque read, Limits limits) {
        return read.newtonMetres() < limits.least().newtonMetres()
                || read.newtonMetres() > limits.most().newtonMetres();
    }
}

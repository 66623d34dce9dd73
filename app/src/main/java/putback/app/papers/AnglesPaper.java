package putback.app.papers;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import putback.angles.adjusting.AngleJob;
import putback.angles.adjusting.Turned;
import putback.app.papers.Block.Column;
import putback.app.papers.Block.Row;
import putback.app.text.AnglesReport;
import putback.app.wheels.CarSvg;

/** Wheel angles: what to turn, the readings before and after, against what is wanted, and the car drawn. */
final class AnglesPaper {
    private static final double WIDTH_MM = 128;
    private static final Pattern SIZE = Pattern.compile(" width=\"([0-9.]+)\" height=\"([0-9.]+)\"");
    private static final Pattern TYPEFACE = Pattern.compile("font-family:[^;]*;");
    private static final String WARM = "#fbf8f0";
    private static final List<Column> READINGS = List.of(
            new Column("Degrees", 16, false),
            new Column("Left, as read", 28, false),
            new Column("Right, as read", 28, false),
            new Column("Both", 28, false));
    private static final List<Column> TURNING = List.of(
            new Column("Done", 8, false),
            new Column("What to turn, in this order", 74, false),
            new Column("By", 18, false));
    private static final List<Column> GOALS = List.of(
            new Column("Wanted", 27, false),
            new Column("From and to, deg", 17, false),
            new Column("As read", 19, false),
            new Column("Will be", 19, false),
            new Column("Measured again", 18, false));

    private final AnglesReport report;
    private final HouseStyle style;

    private AnglesPaper(AnglesReport report, HouseStyle style) {
        this.report = report;
        this.style = style;
    }

    static Paper of(AngleJob job, JobHead head, HouseStyle style) {
        Turned turned = job.turned();
        AnglesPaper paper = new AnglesPaper(AnglesReport.of(job, turned), style);
        List<Block> blocks = new ArrayList<>();
        paper.turning(blocks);
        paper.readings(blocks);
        paper.goals(blocks);
        paper.beside(blocks);
        blocks.add(new Block.Heading("The car from above"));
        blocks.add(picture(CarSvg.draw("", job.reading().angles(), turned)));
        blocks.add(new Block.Fields(List.of(
                new Block.Field("Set as written above. Signature", ""),
                new Block.Field("Measured again with the car settled. Signature", ""))));
        String title = job.title().isEmpty() ? "Where the wheels point" : job.title();
        return new Paper(Paper.Kind.WHEEL_ANGLES, title, "", head, style, blocks);
    }

    private static Block.Picture picture(String svg) {
        Matcher size = SIZE.matcher(svg);
        double share = size.find() ? Double.parseDouble(size.group(2)) / Double.parseDouble(size.group(1)) : 1;
        return new Block.Picture(
                TYPEFACE.matcher(svg)
                        .replaceAll("font-family:'Liberation Sans';")
                        .replace(WARM, "#ffffff"),
                "The car from above with its toe, camber and thrust line drawn larger. The tables say the same.",
                WIDTH_MM,
                Math.floor(100 * WIDTH_MM * share) / 100);
    }

    private void turning(List<Block> blocks) {
        if (!report.adjustable()) {
            return;
        }
        blocks.add(new Block.Heading("What to turn"));
        if (report.turning().isEmpty()) {
            blocks.add(Block.Words.of("Nothing: leave all of it as it is."));
        } else {
            List<Row> rows = new ArrayList<>();
            for (String one : report.turning()) {
                rows.add(Row.Cells.of(Cell.TICK, Cell.of(style.words(one)), Cell.EMPTY));
            }
            blocks.add(new Block.Table(TURNING, rows, false));
        }
        blocks.add(words(report.straight().isEmpty() ? List.of() : List.of(report.straight())));
    }

    private void readings(List<Block> blocks) {
        blocks.add(new Block.Heading(report.adjustable() ? "As read, and as it will stand" : "As read"));
        List<Row> rows = new ArrayList<>();
        for (int i = 0; i < report.rows().size(); i++) {
            AnglesReport.Row was = report.rows().get(i);
            AnglesReport.Row then = report.then().get(i);
            rows.add(Row.Cells.of(
                    Cell.of(was.name()),
                    cell(was.left(), then.left()),
                    cell(was.right(), then.right()),
                    both(was, then)));
        }
        blocks.add(new Block.Table(READINGS, rows, true));
        List<String> facts = new ArrayList<>(report.facts());
        facts.add(report.gauge());
        blocks.add(words(facts.stream().filter(fact -> !fact.isEmpty()).toList()));
        blocks.add(Block.Words.of("Toe in, top out, axis top rearward and inboard are positive, on either side."));
    }

    private Cell cell(@Nullable Double was, @Nullable Double then) {
        boolean same = was == null || then == null || was.equals(then);
        return Cell.of(shown(was), same ? List.of() : List.of("then " + shown(then)));
    }

    private Cell both(AnglesReport.Row was, AnglesReport.Row then) {
        List<String> below = new ArrayList<>();
        below.add(style.words(was.millimetres()));
        if (!was.together().equals(then.together())) {
            below.add("then " + style.words(then.together()));
            below.add(style.words(then.millimetres()));
        }
        return Cell.of(style.words(was.together()), below);
    }

    private String shown(@Nullable Double degrees) {
        return style.words(AnglesReport.Row.shown(degrees));
    }

    private void goals(List<Block> blocks) {
        if (report.goals().isEmpty()) {
            return;
        }
        blocks.add(new Block.Heading("Against what is wanted"));
        List<Row> rows = new ArrayList<>();
        for (AnglesReport.Goal goal : report.goals()) {
            rows.add(Row.Cells.of(
                    Cell.of(goal.name()),
                    Cell.of(style.words(goal.range() + " deg")),
                    Cell.of(shown(goal.before())),
                    Cell.of(report.adjustable() ? shown(goal.after()) : "", List.of(goal.verdict())),
                    Cell.EMPTY));
        }
        blocks.add(new Block.Table(GOALS, rows, false));
    }

    private void beside(List<Block> blocks) {
        List<String> notes = new ArrayList<>(report.notes());
        report.pointers().forEach(pointer -> notes.add("As read: " + pointer.text()));
        if (!notes.isEmpty()) {
            blocks.add(new Block.Heading("Beside the figures"));
            blocks.add(new Block.Words(notes.stream().map(style::words).toList(), true));
        }
    }

    private Block words(List<String> sentences) {
        return new Block.Words(sentences.stream().map(style::words).toList(), false);
    }
}

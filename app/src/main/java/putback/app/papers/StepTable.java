package putback.app.papers;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import putback.app.papers.Block.Column;
import putback.app.papers.Block.Row;
import putback.app.papers.Cell.Mark;
import putback.app.text.StepLines;
import putback.app.text.Whereabouts;
import putback.plan.Plan;
import putback.plan.steps.Act;
import putback.plan.steps.Phase;
import putback.plan.steps.Step;
import putback.sheet.Height;
import putback.sheet.Joint;

/** The steps of one way, apart or together, each with its cautions and a box to tick. */
final class StepTable {
    private static final List<Column> COLUMNS = List.of(
            new Column("Step", 8, false),
            new Column("State", 6, false),
            new Column("What is done", 72, false),
            new Column("min", 7, true),
            new Column("Done", 7, false));

    private final List<Step> steps;
    private final HouseStyle style;
    private final List<Row> rows = new ArrayList<>();
    private @Nullable Whereabouts here;

    private StepTable(List<Step> steps, HouseStyle style) {
        this.steps = steps;
        this.style = style;
    }

    /** Empty where the plan has no step on this way. */
    static Block.Table of(Plan plan, Phase phase, HouseStyle style) {
        List<Step> steps = new ArrayList<>();
        for (Step step : plan.steps()) {
            if (step.phase() == phase) {
                steps.add(step);
            }
        }
        return new Block.Table(COLUMNS, new StepTable(steps, style).rows(), true);
    }

    private List<Row> rows() {
        int at = 0;
        while (at < steps.size()) {
            StepLines lines = StepLines.at(steps, at, steps.size());
            place(lines.first(), Whereabouts.of(steps, at));
            rows.add(Row.Cells.of(
                    Cell.of(lines.number()),
                    Cell.of(mark(lines.last())),
                    new Cell(Mark.NONE, said(lines.words()), said(lines.stages()), said(lines.cautions())),
                    Cell.of(style.words(lines.minutes())),
                    Cell.TICK));
            at += lines.count();
        }
        return rows;
    }

    private void place(Step step, Whereabouts now) {
        if (step.act() == Act.HEIGHT) {
            rows.add(new Row.Across("CAR: " + standing(step.height())));
            return;
        }
        if (now.station() == null || now.equals(here)) {
            return;
        }
        here = now;
        rows.add(new Row.Across(now.text()));
    }

    private static String standing(Height height) {
        return switch (height) {
            case RAISED -> "raised, wheels hanging";
            case RIDE_HEIGHT -> "at ride height";
            case ON_WHEELS, ANY -> "on its wheels";
        };
    }

    private static Mark mark(Step step) {
        Joint joint = step.joint();
        return switch (step.act()) {
            case UNDO -> Mark.OPEN;
            case BREAK_LOOSE -> Mark.LOOSE;
            case RUN_DOWN -> Mark.STARTED;
            case TIGHTEN -> Mark.TIGHT;
            case START -> joint != null && !joint.entry().kind().threaded() ? Mark.TIGHT : Mark.STARTED;
            case SECOND_LOOK -> Mark.TWICE;
            default -> Mark.NONE;
        };
    }

    private List<String> said(List<String> sentences) {
        List<String> said = new ArrayList<>();
        for (String sentence : sentences) {
            said.add(said(sentence));
        }
        return said;
    }

    private String said(String sentence) {
        return style.words(sentence);
    }
}

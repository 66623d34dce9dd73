package putback.app.ladder;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import putback.app.ladder.Pen.Anchor;
import putback.sheet.Side;
import putback.sheet.Station;

/** What stands outside the rails: brackets for the stations, and on a wide picture tools, minutes and torques. */
final class Margins {
    private record Bracket(double top, double bottom, Station station, Side side) {}

    /** A long bracket says its station again, so that it can be read wherever the picture is cut off. */
    private static final double REPEAT = 420;

    private final Pen pen;
    private final Columns columns;
    private final Rungs rungs;

    Margins(Pen pen, Columns columns, Rungs rungs) {
        this.pen = pen;
        this.columns = columns;
        this.rungs = rungs;
    }

    void draw(List<Placed> rows) {
        for (Bracket bracket : brackets(rows, true)) {
            bracket(bracket, columns.bracketLeft, 1);
        }
        if (!columns.wide) {
            return;
        }
        for (Bracket bracket : brackets(rows, false)) {
            bracket(bracket, columns.bracketRight, -1);
        }
        for (Placed row : rows) {
            figures(row);
        }
    }

    private static List<Bracket> brackets(List<Placed> rows, boolean left) {
        List<Bracket> brackets = new ArrayList<>();
        @Nullable Bracket open = null;
        for (Placed row : rows) {
            Cell cell = left ? row.leftCell() : row.rightCell();
            if (cell == null || cell.joint() == null || cell.station() == null) {
                continue;
            }
            if (open != null && open.station() == cell.station() && open.side() == cell.side()) {
                open = new Bracket(open.top(), row.bottom(), open.station(), open.side());
                brackets.set(brackets.size() - 1, open);
            } else {
                open = new Bracket(row.top(), row.bottom(), cell.station(), cell.side());
                brackets.add(open);
            }
        }
        return brackets;
    }

    /** Inward is 1 where the ladder is to the right of it. */
    private void bracket(Bracket bracket, double x, int inward) {
        double top = bracket.top() + 3;
        double bottom = bracket.bottom() - 3;
        double foot = x + inward * (columns.wide ? 7 : 4);
        pen.path("pb-line", new Track().to(foot, top).to(x, top).to(x, bottom).to(foot, bottom));
        int times = Math.max(1, (int) ((bottom - top) / REPEAT));
        double share = (bottom - top) / times;
        for (int i = 0; i < times; i++) {
            label(bracket, x, inward, top + i * share, share);
        }
    }

    private void label(Bracket bracket, double x, int inward, double top, double room) {
        String side = bracket.side().word();
        String label = bracket.station().word() + (side.isEmpty() ? "" : ", " + side);
        double middle = top + room / 2;
        if (columns.wide) {
            List<String> lines = Measure.wrap(label, columns.smallSize, columns.labelWidth, 2);
            double y = middle + 4.5 - (lines.size() - 1) * columns.smallLine / 2;
            for (String line : lines) {
                pen.text("pb-small pb-quiet", x - inward * 9, y, inward > 0 ? Anchor.END : Anchor.START, line);
                y += columns.smallLine;
            }
        } else {
            upward(label, bracket.station().word(), x - 4, middle, room);
        }
    }

    private void upward(String label, String shorter, double x, double middle, double room) {
        if (Measure.width(label, columns.smallSize) <= room) {
            pen.upward("pb-small pb-quiet", x, middle, label);
        } else if (Measure.width(shorter, columns.smallSize) <= room) {
            pen.upward("pb-small pb-quiet", x, middle, shorter);
        }
    }

    private void figures(Placed row) {
        Cell left = row.leftCell();
        Cell right = row.rightCell();
        double y = row.line() + 4.5;
        if (left != null && left.joint() != null) {
            List<String> tool = Measure.wrap(left.tool(), columns.smallSize, columns.toolWidth, 2);
            double at = y - (tool.size() - 1) * columns.smallLine / 2;
            for (String line : tool) {
                pen.text("pb-small pb-quiet", columns.toolEnd, at, Anchor.END, line);
                at += columns.smallLine;
            }
            pen.text("pb-small", columns.minutesLeft, y, Anchor.END, Figures.minutes(left.minutes()));
        }
        if (right != null) {
            torque(right, y);
            if (right.joint() != null || right.kind() == Cell.Kind.FOLLOW_UP) {
                pen.text("pb-small", columns.minutesRight, y, Anchor.END, Figures.minutes(right.minutes()));
            }
        }
    }

    private void torque(Cell cell, double y) {
        if (cell.fastener() == null) {
            return;
        }
        if (cell.kind() == Cell.Kind.STARTED) {
            String later = "tightened " + Placing.later(cell.fastener().tighten());
            pen.text("pb-small pb-quiet", columns.secondUnit, y, Anchor.END, later);
        } else if (cell.tellsTightness() && Figures.unknown(cell.fastener())) {
            rungs.unknown(columns.firstUnit + 3, y);
        } else if (cell.tellsTightness()) {
            pen.text("pb-small", columns.firstUnit, y, Anchor.END, cell.firstUnit());
            pen.text("pb-small", columns.secondUnit, y, Anchor.END, cell.secondUnit());
        }
    }
}

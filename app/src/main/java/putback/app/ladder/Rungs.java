package putback.app.ladder;

import java.util.List;
import org.jspecify.annotations.Nullable;
import putback.app.ladder.Pen.Anchor;
import putback.sheet.Joint;

/** Rungs with their marks and lettering. */
final class Rungs {
    private final Pen pen;
    private final Columns columns;
    private final Marks marks;
    private final Crossing crossing;
    private final int deepest;

    Rungs(Pen pen, Columns columns, Crossing crossing, int deepest) {
        this.pen = pen;
        this.columns = columns;
        this.marks = new Marks(pen);
        this.crossing = crossing;
        this.deepest = deepest;
    }

    /** The bars from rail to rail; those that change height last, so that they pass in front. */
    void bars(List<Placed> rows) {
        for (Placed row : rows) {
            Cell left = row.leftCell();
            if (row.row().rung() && left != null) {
                bar(left, new Track().to(columns.railLeft, row.line()).to(columns.railRight, row.line()));
            }
        }
        for (Crossing.Jog jog : crossing.jogs()) {
            pen.path("pb-under", jogTrack(rows, jog));
        }
        for (Crossing.Jog jog : crossing.jogs()) {
            Cell left = rows.get(jog.left()).leftCell();
            if (left != null) {
                pen.path(left.threaded() ? "pb-bar" : "pb-wire", jogTrack(rows, jog));
            }
        }
        for (Crossing.Jog jog : crossing.jogs()) {
            Cell left = rows.get(jog.left()).leftCell();
            if (left != null && left.threaded() && !left.critical()) {
                pen.path("pb-slot", jogTrack(rows, jog));
            }
        }
    }

    private Track jogTrack(List<Placed> rows, Crossing.Jog jog) {
        double x = crossing.x(jog, columns, deepest);
        double from = rows.get(jog.left()).line();
        double to = rows.get(jog.right()).line();
        double turn = to > from ? 6 : -6;
        return new Track()
                .to(columns.railLeft, from)
                .to(x - 6, from)
                .bend(x, from, x, from + turn)
                .to(x, to - turn)
                .bend(x, to, x + 6, to)
                .to(columns.railRight, to);
    }

    /** A wire for what has no thread, an open bar for a thread, a solid one for what is critical. */
    private void bar(Cell cell, Track track) {
        if (!cell.threaded()) {
            pen.path("pb-wire", track);
            return;
        }
        pen.path("pb-bar", track);
        if (!cell.critical()) {
            pen.path("pb-slot", track);
        }
    }

    /** Marks and lettering of all rows. */
    void letters(List<Placed> rows) {
        for (Placed row : rows) {
            pen.group("pb-row");
            Cell left = row.leftCell();
            Cell right = row.rightCell();
            if (left != null) {
                leftMark(left, row);
                pen.text("pb-small pb-quiet", columns.numberLeft, row.line() + 4.5, Anchor.END, "" + left.step());
            }
            if (right != null) {
                rightMark(right, row);
                pen.text("pb-small pb-quiet", columns.numberRight, row.line() + 4.5, Anchor.START, "" + right.step());
            }
            inside(row);
            pen.end();
        }
    }

    private void leftMark(Cell cell, Placed row) {
        double x = columns.railLeft;
        double y = row.line();
        Joint joint = cell.joint();
        switch (cell.kind()) {
            case JOINT, STARTED, TIGHTENED -> {
                if (joint != null) {
                    marks.open(joint.entry().kind(), x, y, cell.singleUse());
                }
            }
            case LOOSE -> marks.started(x, y, -1, false);
            case HEIGHT -> level(row, true);
            case AID_ON, AID_OFF -> {}
            case OTHER, FOLLOW_UP -> marks.other(x, y, cell.kind() == Cell.Kind.FOLLOW_UP);
        }
    }

    private void rightMark(Cell cell, Placed row) {
        double x = columns.railRight;
        double y = row.line();
        Joint joint = cell.joint();
        switch (cell.kind()) {
            case JOINT, TIGHTENED -> {
                if (joint != null && !cell.threaded()) {
                    marks.closed(joint.entry().kind(), x, y, cell.singleUse());
                } else {
                    marks.tight(x, y, 1, cell.singleUse());
                }
            }
            case STARTED, LOOSE -> marks.started(x, y, 1, cell.singleUse());
            case HEIGHT -> level(row, false);
            case AID_ON, AID_OFF -> {}
            case OTHER, FOLLOW_UP -> marks.other(x, y, cell.kind() == Cell.Kind.FOLLOW_UP);
        }
        if (cell.critical() && (cell.kind() == Cell.Kind.JOINT || cell.kind() == Cell.Kind.TIGHTENED)) {
            marks.critical(x - 12, y);
        }
    }

    private void level(Placed row, boolean left) {
        double x = left ? columns.railLeft : columns.railRight;
        double out = left ? columns.numberLeft + 5 : columns.numberRight - 4;
        pen.line("pb-datum", out, row.line(), x, row.line());
        marks.level(x, row.line());
    }

    private void inside(Placed row) {
        double middle = (row.areaLeft() + row.areaRight()) / 2;
        boolean ends = !row.name().isEmpty();
        double y = row.line() - 6 - (row.name().size() - 1) * columns.nameLine;
        for (String line : row.name()) {
            name(row, middle, y, line);
            y += columns.nameLine;
        }
        double first = ends
                ? row.line() + 6 + 11
                : row.line() + 4.5 - (Math.max(row.left().size(), row.right().size()) - 1) * columns.smallLine / 2;
        lines(row.left(), row.areaLeft(), first, Anchor.START, ends ? "pb-small pb-quiet" : "pb-small");
        right(row, first, ends);
        double under = first + Math.max(row.left().size(), row.right().size()) * columns.smallLine;
        boolean centred = columns.wide && row.rightCell() != null;
        lines(
                row.below(),
                centred ? middle : row.areaLeft(),
                under,
                centred ? Anchor.MIDDLE : Anchor.START,
                "pb-small pb-quiet");
    }

    /** In the middle; where only the right end is here, at the right. */
    private void name(Placed row, double middle, double y, String line) {
        boolean onlyRight = row.leftCell() == null;
        boolean onlyLeft = row.rightCell() == null;
        if (onlyRight) {
            pen.text("pb-name", row.areaRight(), y, Anchor.END, line);
        } else if (onlyLeft) {
            pen.text("pb-name", row.areaLeft(), y, Anchor.START, line);
        } else {
            pen.text("pb-name", middle, y, Anchor.MIDDLE, line);
        }
    }

    private void right(Placed row, double first, boolean ends) {
        @Nullable Cell cell = row.rightCell();
        boolean unknown =
                cell != null && cell.fastener() != null && cell.tellsTightness() && Figures.unknown(cell.fastener());
        if (ends && unknown && !row.right().isEmpty()) {
            unknown(row.areaRight(), first);
        } else {
            lines(row.right(), row.areaRight(), first, Anchor.END, "pb-small");
        }
    }

    /** A torque that nobody has said: an empty, dashed box where the figure would be. */
    void unknown(double right, double baseline) {
        String text = "not known";
        double width = Measure.width(text, columns.smallSize) + 10;
        pen.rect("pb-dash", right - width, baseline - 11.5, width, 16);
        pen.text("pb-small pb-unknown", right - 5, baseline, Anchor.END, text);
    }

    private void lines(List<String> lines, double x, double first, Anchor anchor, String kind) {
        double y = first;
        for (String line : lines) {
            pen.text(kind, x, y, anchor, line);
            y += columns.smallLine;
        }
    }
}

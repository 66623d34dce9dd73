package putback.app.ladder;

import java.util.ArrayList;
import java.util.List;

/** What is on the car only to help: a line outside the rails from where it goes on to where it comes off. */
final class AidLines {
    /** One aid placed: its lane, the heights of its ends, and on which rails they are. */
    private record Line(int lane, double on, boolean onLeft, double off, boolean offLeft) {}

    private final Pen pen;
    private final Columns columns;
    private final Marks marks;

    AidLines(Pen pen, Columns columns) {
        this.pen = pen;
        this.columns = columns;
        this.marks = new Marks(pen);
    }

    /**
     * @param bottom where the lowest lane may turn round
     */
    void draw(List<AidSpan> spans, List<Placed> rows, double bottom) {
        List<Integer> freeFrom = new ArrayList<>();
        for (AidSpan span : spans) {
            Line line = line(span, rows, lane(freeFrom, span));
            line(line, bottom);
        }
    }

    /** The first lane free when it goes on; the last takes what is left over. */
    private int lane(List<Integer> freeFrom, AidSpan span) {
        for (int lane = 0; lane < freeFrom.size(); lane++) {
            if (freeFrom.get(lane) < span.on()) {
                freeFrom.set(lane, span.off());
                return lane;
            }
        }
        if (freeFrom.size() < columns.lanes) {
            freeFrom.add(span.off());
            return freeFrom.size() - 1;
        }
        return columns.lanes - 1;
    }

    private static Line line(AidSpan span, List<Placed> rows, int lane) {
        double on = rows.get(0).top();
        double off = rows.get(0).top();
        boolean onLeft = true;
        boolean offLeft = false;
        for (Placed row : rows) {
            Cell left = row.leftCell();
            Cell right = row.rightCell();
            if (left != null && left.step() == span.on() || right != null && right.step() == span.on()) {
                on = row.line();
                onLeft = left != null && left.step() == span.on();
            }
            if (left != null && left.step() == span.off() || right != null && right.step() == span.off()) {
                off = row.line();
                offLeft = left != null && left.step() == span.off();
            }
        }
        return new Line(lane, on, onLeft, off, offLeft);
    }

    private void line(Line line, double bottom) {
        double from = line.onLeft() ? columns.laneLeft(line.lane()) : columns.laneRight(line.lane());
        double to = line.offLeft() ? columns.laneLeft(line.lane()) : columns.laneRight(line.lane());
        Track track = new Track().to(from, line.on());
        if (line.onLeft() != line.offLeft()) {
            double turn = bottom + line.lane() * columns.laneGap;
            track.to(from, turn - 12)
                    .bend(from, turn, from + 12, turn)
                    .to(to - 12, turn)
                    .bend(to, turn, to, turn - 12);
        }
        pen.path("pb-aid", track.to(to, line.off()));
        marks.aid(line.onLeft() ? columns.railLeft : columns.railRight, line.on(), from);
        marks.aid(line.offLeft() ? columns.railLeft : columns.railRight, line.off(), to);
    }
}

package putback.app.ladder;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import putback.sheet.Height;

/** The two rails. How the car stands shows in them: solid on wheels, open when raised, ticked at ride height. */
final class RailLines {
    /** A stretch of one rail. */
    private record Stretch(double from, double to, Height height) {}

    private final Pen pen;

    RailLines(Pen pen) {
        this.pen = pen;
    }

    void draw(List<Placed> rows, Columns columns, double bottom) {
        rail(stretches(rows, true, bottom), columns.railLeft);
        rail(stretches(rows, false, bottom), columns.railRight);
    }

    /** The way in which the rail is drawn along a track. */
    void stroke(Track track, Height height) {
        pen.path("pb-rail", track);
        if (height != Height.ON_WHEELS) {
            pen.path("pb-core", track);
        }
        if (height == Height.RIDE_HEIGHT) {
            pen.path("pb-ticks", track);
        }
    }

    private void rail(List<Stretch> stretches, double x) {
        for (Stretch stretch : stretches) {
            stroke(new Track().to(x, stretch.from()).to(x, stretch.to()), stretch.height());
        }
    }

    /** How the car stands at the lower end of a rail. */
    static Height lowest(List<Placed> rows, boolean left) {
        Height height = Height.RAISED;
        for (Placed row : rows) {
            Cell cell = left ? row.leftCell() : row.rightCell();
            height = cell == null ? height : cell.height();
        }
        return height;
    }

    /** Down the left rail a change holds from its mark on; up the right rail what is below its mark held before. */
    private static List<Stretch> stretches(List<Placed> rows, boolean left, double bottom) {
        List<Stretch> found = new ArrayList<>();
        double from = rows.get(0).top();
        @Nullable Height height = null;
        for (Placed row : rows) {
            Cell cell = left ? row.leftCell() : row.rightCell();
            if (cell == null) {
                continue;
            }
            if (height != null && height != cell.height()) {
                double at = cell.kind() == Cell.Kind.HEIGHT ? row.line() : row.top();
                found.add(new Stretch(from, at, height));
                from = at;
            }
            height = cell.height();
        }
        found.add(new Stretch(from, bottom, height == null ? Height.RAISED : height));
        return found;
    }
}

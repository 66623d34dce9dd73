package putback.app.ladder;

import java.util.List;

/** The ground that the plan digs into: hatched like a cut face, reaching in further the deeper a rung lies. */
final class Ground {
    private final Pen pen;
    private final Columns columns;

    Ground(Pen pen, Columns columns) {
        this.pen = pen;
        this.columns = columns;
    }

    void draw(List<Placed> rows, String hatch) {
        bank(rows, true, hatch);
        bank(rows, false, hatch);
    }

    private void bank(List<Placed> rows, boolean left, String hatch) {
        double rail = left ? columns.railLeft : columns.railRight;
        int inward = left ? 1 : -1;
        Track area = new Track();
        Track edge = new Track();
        double reach = 0;
        point(area, edge, rail, rows.get(0).top());
        for (Placed row : rows) {
            double bank = left ? row.bankLeft() : row.bankRight();
            if (bank != reach) {
                point(area, edge, rail + inward * reach, row.top());
                reach = bank;
                point(area, edge, rail + inward * reach, row.top());
            }
        }
        double bottom = rows.get(rows.size() - 1).bottom();
        point(area, edge, rail + inward * reach, bottom);
        area.to(rail, bottom).close();
        pen.raw("<path fill=\"url(#")
                .raw(hatch)
                .raw(")\" d=\"")
                .raw(area.text())
                .raw("\"/>");
        pen.path("pb-hair", edge);
    }

    private static void point(Track area, Track edge, double x, double y) {
        area.to(x, y);
        edge.to(x, y);
    }
}

package putback.app.ladder;

import java.util.ArrayList;
import java.util.List;
import putback.app.ladder.Pen.Anchor;
import putback.plan.Plan;
import putback.quantity.Minutes;
import putback.sheet.Height;
import putback.sheet.JointKind;

/** Below the ladder: the key to its marks, and the title block with the sums. */
final class Foot {
    /** One line of the key; draw puts the sign with its middle at a point. */
    private record Entry(Sign sign, String text) {}

    @FunctionalInterface
    private interface Sign {
        void at(Pen pen, double x, double y);
    }

    private static final double KEY_LINE = 26;
    private static final double BLOCK_LINE = 24;

    private final Columns columns;
    private final List<Entry> key = new ArrayList<>();
    private final List<String[]> block = new ArrayList<>();

    Foot(Plan plan, Columns columns, Rails rails, int deepest) {
        this.columns = columns;
        collectKey(rails);
        block.add(new String[] {
            "fixings opened", Integer.toString(plan.selection().open().size())
        });
        block.add(new String[] {"layers deep", Integer.toString(deepest + 1)});
        block.add(new String[] {"work", Figures.minutes(plan.selection().work()) + " min"});
        block.add(new String[] {"set-up", Figures.minutes(plan.setup()) + " min"});
        block.add(new String[] {"total", Figures.minutes(plan.total()) + " min"});
        block.add(new String[] {"least possible", proof(plan)});
    }

    private static String proof(Plan plan) {
        Minutes open = plan.objective().minus(plan.proof().bound());
        return plan.proof().proven() ? "proven" : "within " + Figures.minutes(open) + " min";
    }

    private void collectKey(Rails rails) {
        List<Cell> all = new ArrayList<>(rails.left());
        all.addAll(rails.right());
        key.add(new Entry((pen, x, y) -> new Marks(pen).open(JointKind.BOLT, x, y, false), "open: an empty bolt hole"));
        key.add(new Entry((pen, x, y) -> new Marks(pen).started(x - 11, y, 1, false), "started: a nut on its thread"));
        key.add(new Entry(
                (pen, x, y) -> new Marks(pen).tight(x - 11, y, 1, false), "tightened: the nut down on its face"));
        if (all.stream().anyMatch(Cell::singleUse)) {
            key.add(new Entry(
                    (pen, x, y) -> new Marks(pen).open(JointKind.BOLT, x, y, true),
                    "second ring: single-use, fit new"));
        }
        if (all.stream().anyMatch(Cell::critical)) {
            key.add(new Entry(Foot::criticalSign, "critical: seen a second time"));
        }
        if (all.stream().anyMatch(cell -> cell.fastener() != null && Figures.unsourced(cell.fastener()))) {
            key.add(new Entry(
                    (pen, x, y) -> pen.text("pb-small", x, y + 4.5, Anchor.MIDDLE, "( )"), "torque without a source"));
        }
        for (JointKind kind : JointKind.values()) {
            if (!kind.threaded() && all.stream().anyMatch(cell -> is(cell, kind))) {
                key.add(new Entry((pen, x, y) -> kindSign(pen, kind, x, y), kind.word() + ": open, closed"));
            }
        }
        if (!rails.aids().isEmpty()) {
            key.add(new Entry((pen, x, y) -> pen.line("pb-aid", x - 18, y, x + 18, y), "an aid, from on to off"));
        }
        key.add(new Entry(Foot::railSigns, "on wheels, raised, ride height"));
    }

    private static boolean is(Cell cell, JointKind kind) {
        return cell.joint() != null && cell.joint().entry().kind() == kind;
    }

    private static void criticalSign(Pen pen, double x, double y) {
        pen.line("pb-bar", x - 18, y, x + 18, y);
        new Marks(pen).critical(x, y);
    }

    private static void kindSign(Pen pen, JointKind kind, double x, double y) {
        new Marks(pen).open(kind, x - 11, y, false);
        new Marks(pen).closed(kind, x, y, false);
    }

    private static void railSigns(Pen pen, double x, double y) {
        Height[] heights = {Height.ON_WHEELS, Height.RAISED, Height.RIDE_HEIGHT};
        for (int i = 0; i < heights.length; i++) {
            double at = x - 13 + i * 13;
            new RailLines(pen).stroke(new Track().to(at, y - 10).to(at, y + 10), heights[i]);
        }
    }

    private int keyColumns() {
        return columns.wide ? 3 : 1;
    }

    private double keyHeight() {
        return Math.ceil(key.size() / (double) keyColumns()) * KEY_LINE;
    }

    private double blockHeight() {
        return (columns.wide ? Math.ceil(block.size() / 2.0) : block.size()) * BLOCK_LINE;
    }

    double height() {
        return columns.wide ? Math.max(keyHeight(), blockHeight()) + 24 : keyHeight() + blockHeight() + 48;
    }

    void draw(Pen pen, double top) {
        double edge = columns.edge;
        pen.line("pb-rule", edge, top, columns.width - edge, top);
        double keyWidth = (columns.wide ? 800 : columns.width - 2 * edge) / keyColumns();
        int perColumn = (int) Math.ceil(key.size() / (double) keyColumns());
        for (int i = 0; i < key.size(); i++) {
            int column = i / perColumn;
            double x = edge + column * keyWidth;
            double y = top + 12 + KEY_LINE / 2 + (i % perColumn) * KEY_LINE;
            key.get(i).sign().at(pen, x + 20, y);
            pen.text("pb-small", x + 46, y + 4.5, Anchor.START, key.get(i).text());
        }
        double blockTop = columns.wide ? top + 12 : top + 30 + keyHeight();
        block(pen, blockTop);
    }

    private void block(Pen pen, double top) {
        double left = columns.wide ? 852 : columns.edge;
        double right = columns.width - columns.edge;
        int across = columns.wide ? 2 : 1;
        double width = (right - left) / across;
        int down = (int) Math.ceil(block.size() / (double) across);
        pen.rect("pb-frame", left, top, right - left, down * BLOCK_LINE);
        for (int i = 0; i < block.size(); i++) {
            int column = i / down;
            double x = left + column * width;
            double y = top + (i % down) * BLOCK_LINE;
            if (i % down > 0) {
                pen.line("pb-rule", x, y, x + width, y);
            }
            pen.text("pb-small pb-label", x + 8, y + 16.5, Anchor.START, block.get(i)[0]);
            pen.text("pb-small pb-strong", x + width - 8, y + 16.5, Anchor.END, block.get(i)[1]);
        }
        if (across == 2) {
            pen.line("pb-frame", left + width, top, left + width, top + down * BLOCK_LINE);
        }
    }
}

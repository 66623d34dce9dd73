package putback.app.ladder;

import java.util.ArrayList;
import java.util.List;
import putback.app.ladder.Pen.Anchor;
import putback.plan.Plan;
import putback.plan.selection.Target;
import putback.sheet.Height;

/** The turn-round at the bottom: the rails bend into a plate with what is renewed. */
final class Plate {
    private static final int NAME_LINES = 3;
    private static final double BEND = 18;

    private final Columns columns;
    private final List<String> lines = new ArrayList<>();
    private final double left;
    private final double right;

    Plate(Plan plan, Columns columns) {
        this.columns = columns;
        double inset = columns.wide ? 74 : 34;
        left = columns.railLeft + inset;
        right = columns.railRight - inset;
        for (Target target : plan.wanted().targets()) {
            add(target.name());
        }
        for (int spoiled : plan.selection().spoiled()) {
            add(plan.assembly().parts().get(spoiled).name() + " (spoiled on the way)");
        }
    }

    private void add(String name) {
        lines.addAll(Measure.wrap(name, columns.nameSize, right - left - 20, NAME_LINES));
    }

    double height() {
        return 16 + columns.smallLine + 4 + lines.size() * columns.nameLine + 10;
    }

    /** Draws it with its upper edge at y, and the rails on the way to it. */
    void draw(Pen pen, RailLines rails, double top, double y, Height down, Height up) {
        double middle = y + height() / 2;
        rails.stroke(bend(columns.railLeft, 1, top, middle, left - 9), down);
        rails.stroke(bend(columns.railRight, -1, top, middle, right + 1), up);
        pen.raw("<rect class=\"pb-plate\" rx=\"3\"").attribute("x", left).attribute("y", y);
        pen.attribute("width", right - left).attribute("height", height()).raw("/>");
        arrow(pen, left - 1, middle, 1);
        double x = (left + right) / 2;
        pen.text("pb-small pb-label", x, y + 16 + 6, Anchor.MIDDLE, "RENEW");
        double at = y + 16 + columns.smallLine + columns.nameLine - 3;
        for (String line : lines) {
            pen.text("pb-name pb-strong", x, at, Anchor.MIDDLE, line);
            at += columns.nameLine;
        }
    }

    private static Track bend(double rail, int inward, double top, double middle, double end) {
        return new Track()
                .to(rail, top)
                .to(rail, middle - BEND)
                .bend(rail, middle, rail + inward * BEND, middle)
                .to(end, middle);
    }

    static void arrow(Pen pen, double x, double y, int direction) {
        Track head = new Track()
                .to(x, y)
                .to(x - direction * 12, y - 8)
                .to(x - direction * 12, y + 8)
                .close();
        pen.path("pb-arrow", head);
    }
}

package putback.app.ladder;

import java.util.List;
import putback.app.ladder.Pen.Anchor;
import putback.plan.Plan;
import putback.plan.selection.Target;

/** Above the ladder: whose corner it is, what is renewed, and what the columns hold. */
final class Heading {
    private static final double LINE = 24;
    private static final String LEFT = ", left";
    private static final String RIGHT = ", right";

    private final Columns columns;
    private final List<String> title;
    private final List<String> renew;

    Heading(Plan plan, Columns columns, int deepest) {
        this.columns = columns;
        double width = columns.width - 2 * columns.edge;
        title = Measure.wrap(plan.assembly().sheet().title(), columns.titleSize, width, 3);
        renew = Measure.wrap("Renew: " + renewed(plan), columns.nameSize, width, 4);
    }

    /** The names of what is renewed, the two sides of one thing said once. */
    static String renewed(Plan plan) {
        StringBuilder names = new StringBuilder();
        List<String> all = plan.wanted().targets().stream().map(Target::name).toList();
        for (String name : all) {
            String left = name.endsWith(RIGHT) ? name.substring(0, name.length() - RIGHT.length()) + LEFT : "";
            if (!all.contains(left)) {
                names.append(names.isEmpty() ? "" : "; ").append(name);
                names.append(name.endsWith(LEFT) && all.contains(right(name)) ? " and right" : "");
            }
        }
        return names.toString();
    }

    private static String right(String left) {
        return left.substring(0, left.length() - LEFT.length()) + RIGHT;
    }

    double height() {
        return columns.edge + title.size() * LINE + renew.size() * columns.nameLine + (columns.wide ? 62 : 50);
    }

    void draw(Pen pen) {
        double y = columns.edge + 16;
        for (String line : title) {
            pen.text("pb-title pb-strong", columns.edge, y, Anchor.START, line);
            y += LINE;
        }
        for (String line : renew) {
            pen.text("pb-name", columns.edge, y - 2, Anchor.START, line);
            y += columns.nameLine;
        }
        double base = height() - 14;
        arrow(pen, columns.railLeft, base, true);
        arrow(pen, columns.railRight, base, false);
        pen.text("pb-small pb-label", columns.railLeft + 12, base, Anchor.START, "APART");
        pen.text("pb-small pb-label", columns.railRight - 12, base, Anchor.END, "TOGETHER");
        if (columns.wide) {
            columnHeads(pen, base);
        }
        pen.raw("\n");
    }

    private void columnHeads(Pen pen, double base) {
        head(pen, columns.bracketLeft - 9, base, Anchor.END, "station");
        head(pen, columns.toolEnd, base, Anchor.END, "tool");
        head(pen, columns.minutesLeft, base, Anchor.END, "min");
        head(pen, columns.numberLeft, base, Anchor.END, "step");
        head(pen, columns.numberRight, base, Anchor.START, "step");
        head(pen, columns.firstUnit, base, Anchor.END, "N\u00b7m");
        head(pen, columns.secondUnit, base, Anchor.END, "lbf\u00b7ft");
        head(pen, columns.minutesRight, base, Anchor.END, "min");
        head(pen, columns.bracketRight + 9, base, Anchor.START, "station");
        pen.line("pb-rule", columns.edge, base + 7, columns.railLeft - 16, base + 7);
        pen.line("pb-rule", columns.railRight + 16, base + 7, columns.width - columns.edge, base + 7);
    }

    private static void head(Pen pen, double x, double y, Anchor anchor, String text) {
        pen.text("pb-small pb-label", x, y, anchor, text);
    }

    private static void arrow(Pen pen, double x, double y, boolean down) {
        double tip = down ? y + 4 : y - 14;
        double tail = down ? y - 14 : y + 4;
        double wing = down ? tip - 8 : tip + 8;
        pen.path("pb-line", new Track().to(x, tail).to(x, tip));
        pen.path(
                "pb-solid",
                new Track().to(x, tip).to(x - 4.5, wing).to(x + 4.5, wing).close());
    }
}

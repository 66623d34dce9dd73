package putback.app.ladder;

import java.util.List;
import putback.plan.Plan;
import putback.plan.selection.Target;
import putback.sheet.Height;

/** Draws a plan as the ladder: down the left rail apart, up the right rail together, a rung for each opened joint. */
public final class LadderSvg {
    private final Plan plan;
    private final LadderSize size;
    private final Columns columns;
    private final Pen pen;

    private LadderSvg(Plan plan, LadderSize size) {
        this.plan = plan;
        this.size = size;
        this.columns = new Columns(size.wide());
        this.pen = new Pen(2048 + plan.steps().size() * 600);
    }

    /** A complete SVG document; the same plan gives the same text. */
    public static String draw(Plan plan, LadderSize size) {
        return new LadderSvg(plan, size).draw();
    }

    private String draw() {
        Rails rails = Rails.of(plan);
        List<Row> rows = Rows.align(rails.left(), rails.right());
        int deepest = deepest(rails);
        Crossing crossing = Crossing.of(rows, columns.wide ? 5 : 3);
        Heading heading = new Heading(plan, columns, deepest);
        List<Placed> placed = Placing.of(rows, columns, deepest, crossing, heading.height());
        double bottom = placed.isEmpty()
                ? heading.height()
                : placed.get(placed.size() - 1).bottom();
        Plate plate = new Plate(plan, columns);
        double plateTop = bottom + 22;
        double turn = plateTop + plate.height() + 12;
        Foot foot = new Foot(plan, columns, rails, deepest);
        double footTop = turn + (rails.aids().isEmpty() ? 12 : columns.lanes * columns.laneGap + 16);
        open(rails, footTop + foot.height() + (columns.wide ? 18 : 10));
        heading.draw(pen);
        if (!placed.isEmpty()) {
            ladder(placed, rails, crossing, deepest, turn);
        }
        RailLines lines = new RailLines(pen);
        Height down = RailLines.lowest(placed, true);
        Height up = RailLines.lowest(placed, false);
        plate.draw(pen, lines, bottom - 1, plateTop, down, up);
        foot.draw(pen, footTop);
        return pen.raw("</svg>\n").toString();
    }

    private void ladder(List<Placed> placed, Rails rails, Crossing crossing, int deepest, double turn) {
        double bottom = placed.get(placed.size() - 1).bottom();
        new Ground(pen, columns).draw(placed, hatchId());
        Rungs rungs = new Rungs(pen, columns, crossing, deepest);
        rungs.bars(placed);
        new RailLines(pen).draw(placed, columns, bottom);
        new AidLines(pen, columns).draw(rails.aids(), placed, turn);
        new Margins(pen, columns, rungs).draw(placed);
        rungs.letters(placed);
    }

    private static int deepest(Rails rails) {
        int deepest = 0;
        for (Cell cell : rails.left()) {
            deepest = Math.max(deepest, cell.depth());
        }
        return deepest;
    }

    private String hatchId() {
        return "pb-hatch-" + size.word();
    }

    private void open(Rails rails, double height) {
        pen.raw("<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"pb-ladder pb-")
                .raw(size.word())
                .raw("\"");
        pen.raw(" role=\"img\" aria-labelledby=\"pb-title-")
                .raw(size.word())
                .raw(" pb-desc-")
                .raw(size.word());
        pen.raw("\" viewBox=\"0 0 ")
                .number(columns.width)
                .raw(" ")
                .number(Math.ceil(height))
                .raw("\"");
        pen.attribute("width", columns.width)
                .attribute("height", Math.ceil(height))
                .raw(">\n");
        pen.raw("<title id=\"pb-title-")
                .raw(size.word())
                .raw("\">")
                .escaped(title())
                .raw("</title>\n");
        pen.raw("<desc id=\"pb-desc-")
                .raw(size.word())
                .raw("\">")
                .escaped(description(rails))
                .raw("</desc>\n");
        pen.raw("<style>\n")
                .raw(LadderStyle.of(size, columns))
                .raw("</style>\n<defs><pattern id=\"")
                .raw(hatchId());
        pen.raw("\" width=\"5\" height=\"5\" patternUnits=\"userSpaceOnUse\" patternTransform=\"rotate(45)\">");
        pen.raw("<line class=\"pb-hatch\" x1=\"0\" y1=\"0\" x2=\"0\" y2=\"5\"/></pattern></defs>\n");
        pen.rect("pb-ground", 0, 0, columns.width, Math.ceil(height));
        if (columns.wide) {
            pen.rect("pb-rule", 8.5, 8.5, columns.width - 17, Math.ceil(height) - 17);
            pen.rect("pb-frame", 12.5, 12.5, columns.width - 25, Math.ceil(height) - 25);
        }
        pen.raw("\n");
    }

    private String title() {
        return plan.assembly().sheet().title() + ": " + Heading.renewed(plan);
    }

    /** What the picture shows, for those who do not see it. */
    private String description(Rails rails) {
        StringBuilder said = new StringBuilder(400);
        said.append("Opened in this order: ");
        names(said, rails.left(), 0, 1);
        said.append(". Renewed: ").append(targets()).append(". Closed in this order: ");
        names(said, rails.right(), rails.right().size() - 1, -1);
        return said.append('.').toString();
    }

    private static void names(StringBuilder to, List<Cell> cells, int from, int step) {
        String between = "";
        for (int i = from; i >= 0 && i < cells.size(); i += step) {
            if (cells.get(i).rungEnd()) {
                to.append(between).append(cells.get(i).text());
                between = "; ";
            }
        }
    }

    private String targets() {
        StringBuilder names = new StringBuilder();
        for (Target target : plan.wanted().targets()) {
            names.append(names.isEmpty() ? "" : "; ").append(target.name());
        }
        return names.toString();
    }
}

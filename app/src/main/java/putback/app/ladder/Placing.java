package putback.app.ladder;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import putback.sheet.Height;

/** Gives each row its height and its text its lines. */
final class Placing {
    private static final int NAME_LINES = 3;
    private static final int SMALL_LINES = 3;

    private final Columns columns;
    private final int deepest;
    private final Crossing crossing;
    private final List<Placed> placed = new ArrayList<>();
    private double y;
    private int depthLeft;
    private int depthRight;

    private Placing(Columns columns, int deepest, Crossing crossing, double top) {
        this.columns = columns;
        this.deepest = deepest;
        this.crossing = crossing;
        this.y = top;
    }

    static List<Placed> of(List<Row> rows, Columns columns, int deepest, Crossing crossing, double top) {
        Placing placing = new Placing(columns, deepest, crossing, top);
        for (Row row : rows) {
            placing.place(row);
        }
        return placing.placed;
    }

    private void place(Row row) {
        Cell left = row.left();
        Cell right = row.right();
        depthLeft = left != null && left.rungEnd() ? left.depth() : depthLeft;
        depthRight = right != null && right.rungEnd() ? right.depth() : depthRight;
        double bankLeft = columns.bank(depthLeft, deepest);
        double bankRight = columns.bank(depthRight, deepest);
        double areaLeft = columns.railLeft + bankLeft + columns.pad;
        double areaRight = Math.min(columns.railRight - bankRight - columns.pad, limit(placed.size()));
        boolean ends = left != null && left.rungEnd() || right != null && right.rungEnd();
        placed.add(
                ends
                        ? rungRow(row, bankLeft, bankRight, areaLeft, areaRight)
                        : plainRow(row, bankLeft, bankRight, areaLeft, areaRight));
        y = placed.get(placed.size() - 1).bottom();
    }

    /** How far to the right text may reach in a row where rungs change height. */
    private double limit(int row) {
        return crossing.passes(row)
                ? columns.railRight - columns.bank(deepest, deepest) - columns.pad - crossing.room()
                : columns.railRight;
    }

    private Placed rungRow(Row row, double bankLeft, double bankRight, double areaLeft, double areaRight) {
        double width = areaRight - areaLeft;
        Cell named = row.left() == null ? row.right() : row.left();
        List<String> name = named == null ? List.of() : Measure.wrap(named.text(), columns.nameSize, width, NAME_LINES);
        List<String> right = columns.wide ? List.of() : tightness(row.right());
        List<String> left = columns.wide ? List.of() : details(row, width - widest(right));
        List<String> below = leaving(row.left(), width);
        if (below.size() == 1
                && left.size() < right.size()
                && Measure.width(below.get(0), columns.smallSize) <= width - widest(right)) {
            left = join(left, below);
            below = List.of();
        }
        double line = y + 5 + name.size() * columns.nameLine + 5;
        int under = Math.max(left.size(), right.size()) + below.size();
        double bottom = line + (under == 0 ? 10 : 6 + under * columns.smallLine + 3);
        return new Placed(row, y, line, bottom, bankLeft, bankRight, areaLeft, areaRight, name, left, right, below);
    }

    private List<String> leaving(@Nullable Cell cell, double width) {
        if (cell == null || cell.leaving().isEmpty()) {
            return List.of();
        }
        return Measure.wrap("off: " + String.join("; ", cell.leaving()), columns.smallSize, width, SMALL_LINES);
    }

    private static List<String> join(List<String> first, List<String> second) {
        List<String> all = new ArrayList<>(first);
        all.addAll(second);
        return all;
    }

    private double widest(List<String> lines) {
        double widest = 0;
        for (String line : lines) {
            widest = Math.max(widest, Measure.width(line, columns.smallSize) + 10);
        }
        return widest;
    }

    /** Tool and minutes of both ends, on one line where they fit. */
    private List<String> details(Row row, double width) {
        Cell left = row.left();
        Cell right = row.right();
        String minutes = (left == null ? "" : Figures.minutes(left.minutes()))
                + (left == null || right == null ? "" : " + ")
                + (right == null ? "" : Figures.minutes(right.minutes()))
                + " min";
        String tool = left != null ? left.tool() : right == null ? "" : right.tool();
        String both = tool.isEmpty() ? minutes : tool + ", " + minutes;
        if (Measure.width(both, columns.smallSize) <= width) {
            return List.of(both);
        }
        List<String> lines = new ArrayList<>(Measure.wrap(tool, columns.smallSize, width, SMALL_LINES));
        lines.add(Measure.shorten(minutes, columns.smallSize, width));
        return lines;
    }

    static List<String> tightness(@Nullable Cell cell) {
        if (cell == null || cell.fastener() == null) {
            return List.of();
        }
        if (cell.kind() == Cell.Kind.STARTED) {
            return List.of("tightened", later(cell.fastener().tighten()));
        }
        if (!cell.tellsTightness()) {
            return List.of();
        }
        if (Figures.unknown(cell.fastener())) {
            return List.of("not known");
        }
        String second = cell.secondUnit();
        return second.isEmpty() ? List.of(cell.firstUnit()) : List.of(cell.firstUnit(), second);
    }

    static String later(Height height) {
        return switch (height) {
            case RIDE_HEIGHT -> "at ride height";
            case ON_WHEELS -> "on wheels";
            case RAISED, ANY -> "further up";
        };
    }

    /** Both units on a line that breaks only between them. */
    private static String inOne(List<String> units) {
        return String.join("\n", units).replace(' ', '\u00a0').replace("\n", " / ");
    }

    private Placed plainRow(Row row, double bankLeft, double bankRight, double areaLeft, double areaRight) {
        double width = areaRight - areaLeft;
        boolean both = row.left() != null && row.right() != null;
        Cell closing = row.right();
        double aside = closing != null && closing.critical() ? 8 : 0;
        double share = (both ? width / 2 - 6 : width) - aside;
        List<String> left = plainLines(row.left(), share);
        List<String> right = plainLines(row.right(), share);
        double height = Math.max(1, Math.max(left.size(), right.size())) * columns.smallLine + 11;
        return new Placed(
                row,
                y,
                y + height / 2,
                y + height,
                bankLeft,
                bankRight,
                areaLeft,
                areaRight - aside,
                List.of(),
                left,
                right,
                List.of());
    }

    private List<String> plainLines(@Nullable Cell cell, double width) {
        if (cell == null) {
            return List.of();
        }
        String text = cell.kind() == Cell.Kind.LOOSE ? "Break loose: " + cell.text() : cell.text();
        List<String> lines = new ArrayList<>(Measure.wrap(text, columns.smallSize, width, SMALL_LINES));
        if (!columns.wide) {
            lines.addAll(Measure.wrap(inOne(tightness(cell)), columns.smallSize, width, 2));
        }
        if (!columns.wide && cell.kind() == Cell.Kind.FOLLOW_UP) {
            lines.add(Figures.minutes(cell.minutes()) + "\u00a0min");
        }
        return lines;
    }
}

package putback.store.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import putback.angles.adjusting.Wanted;
import putback.angles.readings.Figure;
import putback.quantity.Length;
import putback.quantity.Parsed;
import putback.store.sheets.Node.Entries;
import putback.store.sheets.Node.Items;
import putback.store.sheets.Node.Text;

/** Reads the ranges that are wanted; one may depend on ride height, as makers state it. */
final class WantedReader {
    private static final double MOST = 60;
    private static final String EXAMPLE = "[-0.5 deg, 0.5 deg]";
    private static final String BY_HEIGHT = "{at: [356 mm, 365 mm], range: [-0.8 deg, -0.3 deg]}";
    private static final Map<String, String> AXLES = new TreeMap<>(Map.of("front", "front", "rear", "rear"));

    private final AngleAmounts amounts;
    private final Faults faults;
    private final @Nullable Fields heights;
    private final List<Wanted> wanted = new ArrayList<>();

    WantedReader(AngleAmounts amounts, @Nullable Fields heights, Faults faults) {
        this.amounts = amounts;
        this.heights = heights;
        this.faults = faults;
    }

    List<Wanted> all(Fields file) {
        Fields axles = file.map("wanted", Keys.AXLES);
        for (boolean front : new boolean[] {true, false}) {
            String axle = front ? "front" : "rear";
            Fields ranges = axles == null ? null : axles.map(axle, front ? Keys.WANTED_FRONT : Keys.WANTED_REAR);
            if (ranges != null) {
                axle(ranges, axle, front);
            }
        }
        return wanted;
    }

    private void axle(Fields ranges, String axle, boolean front) {
        Set<String> wheelKeys = front ? Keys.WANTED_WHEEL : Keys.REAR_WHEEL;
        Fields left = ranges.map("left", wheelKeys);
        Fields right = ranges.map("right", wheelKeys);
        for (Figure figure : Figure.ofAxle(front)) {
            String name = figure.name().substring(axle.length() + 1);
            int dot = name.indexOf('.');
            String key = name.substring(dot + 1);
            Fields own = name.startsWith("left.") ? left : name.startsWith("right.") ? right : null;
            Fields from = dot >= 0 && own != null && own.has(key) ? own : ranges;
            if (from.has(key) && (front ? Keys.WANTED_FRONT : Keys.WANTED_REAR).contains(key)) {
                range(from, key, figure, axle);
            }
        }
    }

    private void range(Fields fields, String key, Figure figure, String axle) {
        List<Node> items = fields.lists().items(key);
        boolean byHeight = !items.isEmpty() && items.get(0) instanceof Entries;
        List<Text> ends = byHeight ? atHeight(fields, key, axle) : ends(fields, key, items);
        if (ends.size() != 2) {
            return;
        }
        boolean total = key.equals("total-toe");
        boolean toe = total || key.equals("toe");
        Double low = end(fields, key, ends.get(0), toe, total);
        Double high = end(fields, key, ends.get(1), toe, total);
        if (low != null && high != null && low > high) {
            fields.fault(key, "the low end is above the high end; write the lower one first, such as " + EXAMPLE);
        } else if (low != null && high != null) {
            wanted.add(new Wanted(figure, low, high));
        }
    }

    private @Nullable Double end(Fields fields, String key, Text text, boolean toe, boolean total) {
        return toe ? amounts.toe(fields, key, text, MOST, total) : amounts.angle(fields, key, text, MOST);
    }

    private static List<Text> ends(Fields fields, String key, List<Node> items) {
        List<Text> ends = new ArrayList<>();
        for (Node item : items) {
            if (item instanceof Text text) {
                ends.add(text);
            }
        }
        if (items.size() != 2 || ends.size() != 2) {
            fields.fault(key, "a range is its two ends, the lower one first, such as " + EXAMPLE);
            return List.of();
        }
        return ends;
    }

    /** The ends of the line of a table that the car's ride height falls in. */
    private List<Text> atHeight(Fields fields, String key, String axle) {
        List<Text> found = List.of();
        String missing = "";
        boolean sound = true;
        for (Entries entries : fields.lists().maps(key, BY_HEIGHT)) {
            Fields line = Fields.of(entries, entries.place(), "a line of " + key, Keys.AT_HEIGHT, faults);
            line.require("at", "range");
            String of = line.word("of", AXLES, axle);
            double[] at = heights(line);
            Length height = heights == null || !heights.has(of)
                    ? null
                    : heights.amounts().length(of, false);
            missing = height == null ? of : missing;
            List<Node> range = line.lists().items("range");
            List<Text> ends = line.has("range") ? ends(line, "range", range) : List.of();
            sound &= at.length == 2 && ends.size() == 2;
            if (height != null && at.length == 2 && at[0] <= height.millimetres() && height.millimetres() <= at[1]) {
                found = ends;
            }
        }
        if (sound && !missing.isEmpty()) {
            fields.fault(key, "it depends on ride height; add ride-height: {" + missing + ": 370 mm} as measured");
        } else if (sound && found.isEmpty()) {
            fields.fault(key, "the ride height given is in none of its lines; measure again, or leave it out");
        }
        return found;
    }

    private static double[] heights(Fields line) {
        List<Node> items = line.node("at") instanceof Items list ? list.items() : List.of();
        double[] ends = new double[2];
        boolean sound = items.size() == 2;
        for (int i = 0; sound && i < 2; i++) {
            Length length =
                    items.get(i) instanceof Text text && Length.parse(text.text()) instanceof Parsed.Value<Length> one
                            ? one.value()
                            : null;
            sound = length != null;
            ends[i] = length == null ? 0 : length.millimetres();
        }
        if (!sound && line.has("at")) {
            line.fault("at", "it is two ride heights, such as [356 mm, 365 mm]");
        }
        return sound ? ends : new double[0];
    }
}

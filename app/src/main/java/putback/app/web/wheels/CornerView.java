package putback.app.web.wheels;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import putback.angles.linkage.Corner;
import putback.angles.linkage.Travel;
import putback.app.text.TravelRow;
import putback.app.wheels.CornerSvg;
import putback.app.wheels.DrawnFor;
import putback.quantity.Length;
import putback.store.sheets.CornerRead;
import putback.store.sheets.CornerReader;
import putback.store.sheets.Fault;

/**
 * One corner as the page shows it, at a travel: the invented example until one's own points are given.
 *
 * @param values what was typed, by name
 * @param travelMm of the wheel centre
 * @param example whether the car drawn is invented
 * @param missing what of one's own car has still to be typed; empty where nothing or all of it was
 * @param wrong what is wrong, each with the field it is about
 * @param answer null where something is wrong
 */
public record CornerView(
        Map<String, String> values,
        int travelMm,
        boolean example,
        List<String> missing,
        List<Wrong> wrong,
        @Nullable Answer answer) {
    public static final int MOST_MM = 100;
    private static final int MOST_NAMED = 6;
    private static final String NAME = "file";

    /**
     * @param wide front, side and plan, SVG
     * @param narrow the same under one another, for a telephone
     * @param side left or right
     * @param rows what is known of the wheel as it stands and at the travel
     * @param locks where the linkage does not go
     */
    public record Answer(String wide, String narrow, String side, List<TravelRow> rows, List<String> locks) {}

    public CornerView {
        missing = List.copyOf(missing);
        wrong = List.copyOf(wrong);
    }

    /** The value that was typed; empty where there is none. */
    public String value(String name) {
        return values.getOrDefault(name, "");
    }

    /** What is wrong with a field; empty where nothing is. */
    public String wrong(String name) {
        return Wrong.at(wrong, name);
    }

    public List<String> suspensions() {
        return List.of(CornerFields.STRUT, CornerFields.WISHBONE);
    }

    public boolean isSuspension(String suspension) {
        return CornerFields.suspension(values).equals(suspension);
    }

    /** The points of a suspension, each with three fields. */
    public List<CornerPoint> points(String suspension) {
        return CornerFields.points(suspension);
    }

    public List<String> axes() {
        return CornerPoint.AXES;
    }

    /** Name of a point's field. */
    public String field(String suspension, CornerPoint point, String axis) {
        return CornerFields.field(suspension, point, axis);
    }

    /** What has still to be typed, the first of it by name. */
    public String stillMissing() {
        int more = missing.size() - MOST_NAMED;
        return String.join("; ", missing.subList(0, Math.min(MOST_NAMED, missing.size())))
                + (more > 0 ? "; and " + more + " more" : "");
    }

    static CornerView of(Map<String, String> typed) {
        Map<String, String> values = new LinkedHashMap<>();
        typed.forEach((name, value) -> {
            if (!value.isBlank()) {
                values.put(name, value);
            }
        });
        int travel = travel(values.getOrDefault("travel", "0"));
        String file = values.get(NAME);
        List<String> missing = file == null && CornerFields.isOwn(values) ? CornerFields.missing(values) : List.of();
        boolean example = file == null && (!CornerFields.isOwn(values) || !missing.isEmpty());
        TypedFile written = example ? CornerFields.example(values) : CornerFields.written(values);
        CornerRead read = CornerReader.readText(file == null ? written.toString() : file, NAME);
        if (read instanceof CornerRead.Faulty faulty) {
            List<Wrong> wrong = new ArrayList<>();
            for (Fault fault : faulty.faults()) {
                wrong.add(file == null ? Wrong.atField(fault, written) : Wrong.inFile(fault, NAME));
            }
            return new CornerView(values, travel, false, missing, wrong, null);
        }
        Corner corner = ((CornerRead.Sound) read).corner();
        return new CornerView(values, travel, example, missing, List.of(), answer(corner, travel));
    }

    private static Answer answer(Corner corner, int travel) {
        Travel there = at(corner, travel);
        List<String> locks =
                there.locks().stream().map(lock -> lock.words() + ".").toList();
        return new Answer(
                CornerSvg.draw(corner, travel, DrawnFor.SCREEN),
                CornerSvg.draw(corner, travel, DrawnFor.PHONE),
                corner.right() ? "Right" : "Left",
                TravelRow.of(at(corner, 0), there),
                locks);
    }

    private static Travel at(Corner corner, int travelMm) {
        return Travel.of(corner, new Length(0), new Travel.Span(travelMm, 1, 1));
    }

    private static int travel(String typed) {
        try {
            return Math.max(-MOST_MM, Math.min(MOST_MM, Integer.parseInt(typed.strip())));
        } catch (NumberFormatException none) {
            return 0;
        }
    }
}

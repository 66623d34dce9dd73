package putback.store.sheets;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import putback.angles.adjusting.Adjuster;
import putback.angles.readings.Measure;
import putback.angles.readings.Place;
import putback.angles.readings.WheelAngle;
import putback.quantity.Parsed;
import putback.quantity.PlainNumber;
import putback.store.sheets.Node.Entries;
import putback.store.sheets.Node.Entry;
import putback.store.sheets.Node.Text;

/** Reads what can be turned, and what a unit of it does. */
final class AdjusterReader {
    private static final String EXAMPLE = "left-rod: {front.left.toe: 0.35 deg, per: turn, range: [-6, 6]}";
    private static final double MOST_EFFECT = 20;
    private static final double SMALLEST_EFFECT = 1e-6;
    private static final BigDecimal FARTHEST = BigDecimal.valueOf(1000);
    private static final BigDecimal FARTHEST_WHOLE = BigDecimal.valueOf(100);
    private static final int LONGEST_UNIT = 20;
    static final int MOST_ADJUSTERS = 40;
    private static final Map<String, WheelAngle> ANGLES = angles();
    private static final Set<String> KEYS = keys();

    private final AngleAmounts amounts;
    private final Faults faults;

    AdjusterReader(AngleAmounts amounts, Faults faults) {
        this.amounts = amounts;
        this.faults = faults;
    }

    private static Map<String, WheelAngle> angles() {
        Map<String, WheelAngle> angles = new LinkedHashMap<>();
        for (Place place : Place.values()) {
            for (Measure measure : Measure.values()) {
                WheelAngle angle = new WheelAngle(place, measure);
                angles.put(angle.word(), angle);
            }
        }
        return angles;
    }

    private static Set<String> keys() {
        Set<String> keys = new LinkedHashSet<>(ANGLES.keySet());
        keys.addAll(List.of("per", "range", "whole", "ways"));
        return keys;
    }

    List<Adjuster> all(Fields file) {
        List<Adjuster> adjusters = new ArrayList<>();
        Node node = file.node("adjusters");
        if (node != null && !(node instanceof Entries)) {
            file.fault("adjusters", "this is " + node.phrase() + "; write a map such as " + EXAMPLE);
        }
        Map<String, Entry> entries = node instanceof Entries map ? map.byKey() : Map.of();
        if (entries.size() > MOST_ADJUSTERS) {
            file.fault("adjusters", "no car has more than " + MOST_ADJUSTERS + " of them");
            return adjusters;
        }
        for (Entry entry : entries.values()) {
            String id = entry.key().text();
            if (!Ids.isId(id)) {
                faults.add(
                        entry.key().place(),
                        "an adjuster's id has lower case letters, digits and hyphens, such as left-rod");
            } else if (entry.value() instanceof Entries values) {
                Adjuster adjuster = adjuster(id, values, entry.key().place());
                if (adjuster != null) {
                    adjusters.add(adjuster);
                }
            } else {
                faults.add(
                        entry.place(),
                        "adjuster " + id + " is " + entry.value().phrase() + "; write a map such as " + EXAMPLE);
            }
        }
        return adjusters;
    }

    private @Nullable Adjuster adjuster(String id, Entries values, putback.store.sheets.Place start) {
        Fields fields = Fields.of(values, start, "adjuster " + id, KEYS, faults);
        fields.require("per");
        Map<WheelAngle, Double> effects = new LinkedHashMap<>();
        boolean named = false;
        for (Map.Entry<String, WheelAngle> angle : ANGLES.entrySet()) {
            Text text = fields.single(angle.getKey());
            named |= fields.has(angle.getKey());
            Double effect = text == null ? null : effect(fields, angle.getKey(), text, angle.getValue());
            if (effect != null) {
                effects.put(angle.getValue(), effect);
            }
        }
        if (!named) {
            faults.add(start, "adjuster " + id + " changes nothing; say what one unit of it does, such as " + EXAMPLE);
        }
        boolean whole = fields.flag("whole");
        double[] range = range(fields, whole);
        String per = fields.text("per", "");
        if (per.length() > LONGEST_UNIT) {
            fields.fault("per", "a unit is one word, such as turn, mm or mark");
        }
        return effects.isEmpty() ? null : new Adjuster(id, effects, per, range[0], range[1], whole, ways(fields));
    }

    private @Nullable Double effect(Fields fields, String key, Text text, WheelAngle angle) {
        Double effect = angle.measure() == Measure.TOE
                ? amounts.toe(fields, key, text, MOST_EFFECT, false)
                : amounts.angle(fields, key, text, MOST_EFFECT);
        if (effect != null && Math.abs(effect) < SMALLEST_EFFECT) {
            fields.fault(key, "that is no change; leave it out, or say what one unit does");
            return null;
        }
        return effect;
    }

    private static List<String> ways(Fields fields) {
        List<String> ways = fields.lists().texts("ways");
        if (!ways.isEmpty() && ways.size() != 2) {
            fields.fault("ways", "they are two words, for less and for more of it, such as [shorter, longer]");
            return List.of();
        }
        return ways;
    }

    /** Without one it goes on without end; whole units always have one, since they are tried. */
    private double[] range(Fields fields, boolean whole) {
        double most = whole ? FARTHEST_WHOLE.doubleValue() : Double.POSITIVE_INFINITY;
        double[] range = {-most, most};
        if (!fields.has("range")) {
            return range;
        }
        List<Node> items = fields.lists().items("range");
        if (items.size() != 2) {
            fields.fault("range", "a range is two numbers, how far it goes each way from where it stands: [-6, 6]");
            return range;
        }
        BigDecimal farthest = whole ? FARTHEST_WHOLE : FARTHEST;
        for (int i = 0; i < 2; i++) {
            Text text = fields.lists().asText(items.get(i), "range");
            Parsed<BigDecimal> parsed = text == null ? null : PlainNumber.parse(text.text());
            boolean near = parsed instanceof Parsed.Value<BigDecimal> value
                    && value.value().abs().compareTo(farthest) <= 0;
            BigDecimal end = text == null || parsed == null
                    ? null
                    : fields.told(text, "range", parsed, near, "it may be from -" + farthest + " to " + farthest);
            range[i] = end == null ? range[i] : end.doubleValue();
        }
        if (range[0] > 0 || range[1] < 0) {
            fields.fault("range", "it has to hold 0, which is where it stands now: [-6, 6]");
        }
        return range;
    }
}

package putback.app.web.wheels;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import putback.angles.readings.Measure;
import putback.angles.readings.Place;
import putback.quantity.Parsed;
import putback.quantity.PlainNumber;

/**
 * The fields of the page of wheel angles, written as the file that the command reads. A bare number is degrees, since
 * nothing else can be meant; but for a toe, which is as often read in mm, unless it is zero.
 */
final class AngleFields {
    static final String RATIO = "steering-ratio";
    static final String READ_AT = "toe-read-at";
    static final List<String> UNITS = List.of("turn", "mm", "mark");

    /** What a maker states ranges for, as the file names it. */
    static final List<String> RANGES = List.of(
            "front.camber", "front.total-toe", "front.cross-camber", "rear.camber", "rear.total-toe", "rear.thrust");

    private final Map<String, String> values;
    private final TypedFile file = new TypedFile();

    private AngleFields(Map<String, String> values) {
        this.values = values;
    }

    /** The file; empty where no reading was typed. */
    static TypedFile written(Map<String, String> values) {
        AngleFields fields = new AngleFields(values);
        if (!fields.has("front.") && !fields.has("rear.")) {
            return fields.file;
        }
        fields.readings();
        for (String name : List.of(RATIO, READ_AT)) {
            if (!fields.value(name).isEmpty()) {
                fields.file.value(0, name, fields.value(name), name);
            }
        }
        fields.wanted();
        fields.adjusters();
        return fields.file;
    }

    /** What a wheel's fields ask for. */
    static List<Measure> measures(Place place) {
        return place.isFront() ? List.of(Measure.values()) : List.of(Measure.CAMBER, Measure.TOE);
    }

    private String value(String name) {
        String value = values.get(name);
        return value == null ? "" : value.strip();
    }

    /** Whether a field whose name begins so was filled. */
    private boolean has(String start) {
        return values.keySet().stream().anyMatch(name -> name.startsWith(start));
    }

    private void readings() {
        for (String axle : List.of("front", "rear")) {
            if (has(axle + ".")) {
                file.key(0, axle, "");
            }
            for (Place place : Place.values()) {
                if (place.word().startsWith(axle + ".") && has(place.word() + ".")) {
                    file.key(1, place.isLeft() ? "left" : "right", "");
                    wheel(place);
                }
            }
        }
    }

    private void wheel(Place place) {
        for (Measure measure : measures(place)) {
            String name = place.word() + "." + measure.word();
            if (!value(name).isEmpty()) {
                file.value(2, measure.word(), angle(value(name), measure == Measure.TOE), name);
            }
        }
        String sweep = place.word() + ".sweep.";
        if (has(sweep)) {
            file.key(2, "sweep", sweep + "1.toe");
            for (int at = 1; at <= 2; at++) {
                steered(sweep + at);
            }
        }
    }

    /** One reading of the sweep: how far the wheel is steered, and its camber there. */
    private void steered(String name) {
        String toe = angle(value(name + ".toe"), false);
        String camber = angle(value(name + ".camber"), false);
        if (!toe.isEmpty()) {
            file.itemKey(3, "toe", toe, camber.isEmpty() ? name + ".camber" : name + ".toe");
            if (!camber.isEmpty()) {
                file.value(4, "camber", camber, name + ".camber");
            }
        } else if (!camber.isEmpty()) {
            file.itemKey(3, "camber", camber, name + ".toe");
        }
    }

    private void wanted() {
        if (!has("wanted.")) {
            return;
        }
        file.key(0, "wanted", "");
        for (String axle : List.of("front", "rear")) {
            if (has("wanted." + axle + ".")) {
                file.key(1, axle, "");
            }
            for (String range : RANGES) {
                if (range.startsWith(axle + ".") && has("wanted." + range + ".")) {
                    range(2, range.substring(axle.length() + 1), "wanted." + range, range.endsWith("toe"), false);
                }
            }
        }
    }

    private void range(int depth, String key, String name, boolean toe, boolean plain) {
        String from = value(name + ".from");
        String to = value(name + ".to");
        file.key(depth, key, name + (to.isEmpty() ? ".to" : ".from"));
        for (String end : List.of(".from", ".to")) {
            String typed = value(name + end);
            if (!typed.isEmpty()) {
                file.item(depth + 1, plain ? typed : angle(typed, toe), name + (from.isEmpty() ? ".from" : end));
            }
        }
    }

    private void adjusters() {
        boolean any = false;
        for (Place place : Place.values()) {
            for (Measure measure : List.of(Measure.CAMBER, Measure.TOE)) {
                String own = "turn." + place.word() + "." + measure.word();
                String name = !isTyped(own) && isSame(place) ? own.replace(".right.", ".left.") : own;
                if (isTyped(name)) {
                    if (!any) {
                        file.key(0, "adjusters", "");
                        any = true;
                    }
                    adjuster(place, measure, name);
                }
            }
        }
    }

    private boolean isSame(Place place) {
        return !place.isLeft()
                && !value("same." + (place.isFront() ? "front" : "rear")).isEmpty();
    }

    private boolean isTyped(String name) {
        return !(value(name + ".by") + value(name + ".toe") + value(name + ".from") + value(name + ".to")).isEmpty();
    }

    private void adjuster(Place place, Measure measure, String name) {
        file.key(1, place.word().replace('.', '-') + "-" + measure.word(), name + ".by");
        String by = value(name + ".by");
        if (!by.isEmpty()) {
            file.value(2, place.word() + "." + measure.word(), angle(by, measure == Measure.TOE), name + ".by");
        }
        if (!value(name + ".toe").isEmpty()) {
            file.value(2, place.word() + ".toe", angle(value(name + ".toe"), true), name + ".toe");
        }
        file.value(2, "per", value(name + ".per").isEmpty() ? UNITS.get(0) : value(name + ".per"), name + ".per");
        if (!(value(name + ".from") + value(name + ".to")).isEmpty()) {
            range(2, "range", name, false, true);
        }
        if (!value(name + ".whole").isEmpty()) {
            file.plain(2, "whole", true, name + ".whole");
        }
    }

    private static String angle(String value, boolean toe) {
        return PlainNumber.parse(value) instanceof Parsed.Value<BigDecimal> number
                        && (!toe || number.value().signum() == 0)
                ? value + " deg"
                : value;
    }
}

package putback.app.web.wheels;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;

/** The fields of the page of a corner, written as the file that the command reads; or the invented example. */
final class CornerFields {
    static final String STRUT = "strut";
    static final String WISHBONE = "double wishbone";
    private static final String RADIUS = "tyre-radius";
    private static final String EXAMPLE_RADIUS = "313.6 mm";
    private static final String SPIN = "spin-axis";

    private final Map<String, String> values;
    private final String suspension;
    private final TypedFile file = new TypedFile();

    private CornerFields(Map<String, String> values) {
        this.values = values;
        suspension = suspension(values);
    }

    static String suspension(Map<String, String> values) {
        return WISHBONE.equals(values.get("suspension")) ? WISHBONE : STRUT;
    }

    /** The points that a suspension has. */
    static List<CornerPoint> points(String suspension) {
        return suspension.equals(WISHBONE) ? CornerPoint.WISHBONE : CornerPoint.STRUT;
    }

    /** Name of a field: a point of the other suspension may have the same key. */
    static String field(String suspension, CornerPoint point, String axis) {
        return (suspension.equals(WISHBONE) ? "w." : "s.") + point.key() + "." + axis;
    }

    /** What of one's own car has still to be typed, as a person calls it. */
    static List<String> missing(Map<String, String> values) {
        CornerFields fields = new CornerFields(values);
        List<String> missing = new ArrayList<>();
        for (CornerPoint point : points(fields.suspension)) {
            for (String axis : CornerPoint.AXES) {
                if (fields.value(field(fields.suspension, point, axis)).isEmpty()) {
                    missing.add(point.said() + " " + axis);
                }
            }
        }
        if (fields.value(RADIUS).isEmpty()) {
            missing.add("radius of the tyre under load");
        }
        return missing;
    }

    /** Whether anything of one's own car was typed. */
    static boolean isOwn(Map<String, String> values) {
        String own = suspension(values).equals(WISHBONE) ? "w." : "s.";
        return values.keySet().stream().anyMatch(name -> name.startsWith(own) || name.equals(RADIUS));
    }

    static TypedFile written(Map<String, String> values) {
        CornerFields fields = new CornerFields(values);
        fields.write(fields::value);
        return fields.file;
    }

    /** An invented car, which nobody should set anything by. */
    static TypedFile example(Map<String, String> values) {
        CornerFields fields = new CornerFields(Map.of("suspension", suspension(values)));
        fields.write(name -> {
            for (CornerPoint point : points(fields.suspension)) {
                for (int axis = 0; axis < 3; axis++) {
                    if (name.equals(field(fields.suspension, point, CornerPoint.AXES.get(axis)))) {
                        return point.example().get(axis);
                    }
                }
            }
            return name.equals(RADIUS)
                    ? EXAMPLE_RADIUS
                    : name.equals(SPIN + ".y") ? "150" : name.equals(SPIN + ".z") ? "5" : "";
        });
        return fields.file;
    }

    private String value(String name) {
        String value = values.get(name);
        return value == null ? "" : value.strip();
    }

    private void write(UnaryOperator<String> values) {
        file.value(0, "suspension", suspension, "suspension");
        file.value(0, "side", values.apply("side").equals("right") ? "right" : "left", "side");
        file.key(0, "points", "");
        for (CornerPoint point : points(suspension)) {
            file.key(1, point.key(), field(suspension, point, "x"));
            for (String axis : CornerPoint.AXES) {
                String name = field(suspension, point, axis);
                file.item(2, values.apply(name), name);
            }
        }
        String radius = values.apply(RADIUS);
        file.value(0, RADIUS, radius.matches("[0-9]+([.,][0-9]+)?") ? radius + " mm" : radius, RADIUS);
        boolean spins = CornerPoint.AXES.stream()
                .anyMatch(axis -> !values.apply(SPIN + "." + axis).isEmpty());
        if (spins) {
            file.key(0, SPIN, SPIN + ".y");
            for (String axis : CornerPoint.AXES) {
                String value = values.apply(SPIN + "." + axis);
                file.item(1, value.isEmpty() ? "0" : value, SPIN + "." + axis);
            }
        }
    }
}

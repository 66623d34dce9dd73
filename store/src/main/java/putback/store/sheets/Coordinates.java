package putback.store.sheets;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import putback.angles.space.Vector;
import putback.quantity.Parsed;
import putback.quantity.PlainNumber;
import putback.store.sheets.Node.Text;

/**
 * Points and directions, each a list of three plain numbers in mm.
 *
 * @param right whether they are on the right, and mirrored to the left
 */
record Coordinates(Fields fields, boolean right) {
    private static final BigDecimal FARTHEST_MM = BigDecimal.valueOf(20_000);

    /** The points that are there and can be read, in the order of their names. */
    Map<String, Vector> all(Set<String> names) {
        Map<String, Vector> found = new LinkedHashMap<>();
        for (String name : names) {
            Vector vector = vector(name);
            if (vector != null) {
                found.put(name, vector);
            }
        }
        return found;
    }

    /** Null, with the fault told unless the key is not there at all. */
    @Nullable
    Vector vector(String key) {
        if (!fields.has(key)) {
            return null;
        }
        List<Node> items = fields.lists().items(key);
        if (items.size() != 3) {
            fields.fault(key, "a point is three numbers in mm, x forward, y left, z up, such as [250, 400, 200]");
            return null;
        }
        double[] values = new double[3];
        boolean sound = true;
        for (int i = 0; i < 3; i++) {
            BigDecimal value = number(key, items.get(i));
            sound &= value != null;
            values[i] = value == null ? 0 : value.doubleValue();
        }
        Vector vector = new Vector(values[0], values[1], values[2]);
        return !sound ? null : right ? vector.mirrored() : vector;
    }

    private @Nullable BigDecimal number(String key, Node item) {
        Text text = fields.lists().asText(item, key);
        if (text == null) {
            return null;
        }
        Parsed<BigDecimal> parsed = PlainNumber.parse(text.text());
        boolean near = parsed instanceof Parsed.Value<BigDecimal> value
                && value.value().abs().compareTo(FARTHEST_MM) <= 0;
        return fields.told(text, key, parsed, near, "no point of a car is farther than 20 m from its middle");
    }
}

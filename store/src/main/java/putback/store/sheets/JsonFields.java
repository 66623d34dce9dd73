package putback.store.sheets;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import putback.quantity.Parsed;
import putback.quantity.PlainNumber;
import putback.quantity.Shown;
import putback.sheet.Height;
import putback.store.sheets.Node.Entries;
import putback.store.sheets.Node.Items;
import putback.store.sheets.Node.Text;

/** The keys of a JSON object that other programs write: unknown ones are left alone, {@code null} is not given. */
record JsonFields(Entries entries, Faults faults) {
    private static final double MOST = 1e6;
    private static final int WHOLE_DIGITS = 15;

    Place place() {
        return entries.place();
    }

    @Nullable
    String text(String key) {
        Node node = entries.get(key);
        if (node == null || Node.isNothing(node)) {
            return null;
        }
        if (node instanceof Text text && !text.text().isBlank()) {
            return text.text();
        }
        faults.add(node.place(), key + ": this is " + node.phrase() + "; write a text");
        return null;
    }

    /** A name, or a thing that has its name under {@code id}, as a plan has its wrench; null for anything else. */
    @Nullable
    String named(String key) {
        Node node = entries.get(key);
        Node id = node instanceof Entries thing ? thing.get("id") : node;
        return id instanceof Text text && !text.isNothing() && !text.text().isBlank() ? text.text() : null;
    }

    boolean is(String key, String word) {
        return word.equals(text(key));
    }

    List<String> texts(String key) {
        Node node = entries.get(key);
        List<String> texts = new ArrayList<>();
        if (node instanceof Items items) {
            for (Node item : items.items()) {
                if (item instanceof Text text) {
                    texts.add(text.text());
                } else {
                    faults.add(item.place(), key + ": this is " + item.phrase() + "; write a text");
                }
            }
        } else if (node != null && !Node.isNothing(node)) {
            faults.add(node.place(), key + ": this is " + node.phrase() + "; write a list");
        }
        return texts;
    }

    /** From 0 up. */
    @Nullable
    Double number(String key) {
        Node node = entries.get(key);
        return node == null || Node.isNothing(node) ? null : number(key, node);
    }

    /** A whole number from 1 up. */
    @Nullable
    Long count(String key) {
        Node node = entries.get(key);
        if (node == null || Node.isNothing(node)) {
            return null;
        }
        String written = node instanceof Text text ? text.text() : node.phrase();
        Parsed<BigDecimal> parsed = PlainNumber.parse(written);
        if (parsed instanceof Parsed.Value<BigDecimal> value
                && value.value().stripTrailingZeros().scale() <= 0
                && value.value().signum() > 0
                && value.value().precision() - value.value().scale() <= WHOLE_DIGITS) {
            return value.value().longValue();
        }
        faults.add(node.place(), key + ": \"" + Shown.text(written) + "\" is not a whole number from 1 up");
        return null;
    }

    /** Texts by key; what is no text is told. */
    Map<String, String> map(String key) {
        Node node = entries.get(key);
        Map<String, String> map = new LinkedHashMap<>();
        if (node instanceof Entries inner) {
            JsonFields fields = new JsonFields(inner, faults);
            for (String name : inner.byKey().keySet()) {
                String text = fields.text(name);
                if (text != null) {
                    map.put(name, text);
                }
            }
        } else if (node != null && !Node.isNothing(node)) {
            faults.add(node.place(), key + ": this is " + node.phrase() + "; write a map of texts");
        }
        return map;
    }

    List<Double> numbers(String key) {
        List<Double> numbers = new ArrayList<>();
        if (entries.get(key) instanceof Items items) {
            for (Node item : items.items()) {
                Double number = number(key, item);
                if (number != null) {
                    numbers.add(number);
                }
            }
        }
        return numbers;
    }

    private @Nullable Double number(String key, Node node) {
        String written = node instanceof Text text ? text.text() : node.phrase();
        Parsed<BigDecimal> parsed = PlainNumber.parse(written);
        if (parsed instanceof Parsed.Value<BigDecimal> value) {
            double number = value.value().doubleValue();
            if (number >= 0 && number <= MOST) {
                return number;
            }
        }
        faults.add(node.place(), key + ": \"" + Shown.text(written) + "\" is not a number from 0 to 1000000");
        return null;
    }

    @Nullable
    Height height(String key) {
        String word = text(key);
        if (word == null) {
            return null;
        }
        for (Height height : Height.values()) {
            if (height.word().equals(word)) {
                return height;
            }
        }
        Node node = entries.get(key);
        faults.add(
                node == null ? entries.place() : node.place(),
                key + ": \"" + Shown.text(word) + "\" is no height; it is raised, ride height, on wheels or any");
        return null;
    }
}

package putback.store.sheets;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
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

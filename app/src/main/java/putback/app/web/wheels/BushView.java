package putback.app.web.wheels;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import putback.angles.BushWindUp;
import putback.app.asking.BushQuestion;
import putback.app.asking.Given;
import putback.app.asking.Unclear;
import putback.quantity.Parsed;
import putback.quantity.PlainNumber;

/**
 * The wind-up of a bush, as the page asks about it.
 *
 * @param values what was typed, by name; a bare number is mm
 * @param wrong what is wrong, with its field
 * @param answer null where something is wrong or still missing
 */
public record BushView(
        Map<String, String> values,
        List<Wrong> wrong,
        @Nullable BushWindUp answer) {
    private static final List<String> NAMES = List.of("arm", "ride", "tightened");

    public BushView {
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

    static BushView of(Map<String, String> typed) {
        Map<String, String> values = new LinkedHashMap<>();
        Map<String, String> lengths = new LinkedHashMap<>();
        for (String name : NAMES) {
            String value = typed.getOrDefault(name, "").strip();
            if (!value.isEmpty()) {
                values.put(name, value);
                lengths.put(name, PlainNumber.parse(value) instanceof Parsed.Value ? value + " mm" : value);
            }
        }
        if (values.size() < NAMES.size()) {
            return new BushView(values, List.of(), null);
        }
        try {
            return new BushView(values, List.of(), BushQuestion.answer(new Given(lengths::get, "")));
        } catch (Unclear unclear) {
            List<Wrong> wrong = new ArrayList<>();
            wrong.add(new Wrong(unclear.field(), "", unclear.said()));
            return new BushView(values, wrong, null);
        }
    }
}

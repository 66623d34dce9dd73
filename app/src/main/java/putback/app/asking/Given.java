package putback.app.asking;

import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import putback.quantity.Angle;
import putback.quantity.Parsed;
import putback.quantity.PlainNumber;
import putback.quantity.Torque;

/**
 * Reads values that were typed; a refusal names the one it is about.
 *
 * @param values by name; null or blank for one that is not given
 * @param dash what stands before a name in a message: two hyphens in the terminal
 */
public record Given(Function<String, @Nullable String> values, String dash) {
    /** The same with a torque in place of what was typed under a name, and in newton metres. */
    public Given with(String name, Torque torque) {
        return new Given(
                asked -> asked.equals(name) ? Double.toString(torque.newtonMetres()) + " N·m" : values.apply(asked),
                dash);
    }

    /** Whether it is given at all. */
    public boolean has(String name) {
        return values.apply(name) != null;
    }

    /** The value, or null when it is not given. */
    <T> @Nullable T read(String name, Function<String, Parsed<T>> parse) throws Unclear {
        String text = values.apply(name);
        return text == null ? null : value(name, parse.apply(text));
    }

    /** The value, which has to be there. */
    <T> T need(String name, String example, Function<String, Parsed<T>> parse) throws Unclear {
        T value = read(name, parse);
        if (value == null) {
            throw new Unclear(name, shown(name) + " is missing, such as " + shown(name) + " " + example);
        }
        return value;
    }

    /** What was answered, or its refusal. */
    public static <T> T answer(Parsed<T> parsed) throws Unclear {
        if (parsed instanceof Parsed.Value<T> read) {
            return read.value();
        }
        throw new Unclear("", parsed.refusal());
    }

    Unclear unclear(String name, String what) {
        return new Unclear(name, shown(name) + ": " + what);
    }

    String shown(String name) {
        return dash + name;
    }

    private <T> T value(String name, Parsed<T> parsed) throws Unclear {
        if (parsed instanceof Parsed.Value<T> read) {
            return read.value();
        }
        throw unclear(name, parsed.refusal());
    }

    /** An angle; a plain number is degrees, since nothing else can be meant. */
    static Parsed<Angle> angle(String text) {
        return Angle.parse(PlainNumber.parse(text) instanceof Parsed.Value ? text + " deg" : text);
    }

    /** A number without a unit, above the lowest and at most the highest. */
    static Parsed<Double> number(String text, double above, double most, String what) {
        double value = Double.NaN;
        String plain = text.strip().replace(',', '.');
        if (plain.matches("[+-]?(\\d{1,9}(\\.\\d{0,9})?|\\.\\d{1,9})")) {
            value = Double.parseDouble(plain);
        }
        return value > above && value <= most
                ? new Parsed.Value<>(value)
                : new Parsed.Refused<>("\"" + text + "\" is not " + what);
    }
}

package putback.app.cli;

import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import putback.quantity.Parsed;

/** Reads the values of options; a refusal names the option. */
record Given(String command, Arguments arguments) {
    /** The value of an option, or null when it is not given. */
    <T> @Nullable T read(String option, Function<String, Parsed<T>> parse) throws UsageFault {
        String text = arguments.value(option).orElse(null);
        return text == null ? null : value(option, parse.apply(text));
    }

    /** The value of an option that has to be there. */
    <T> T need(String option, String example, Function<String, Parsed<T>> parse) throws UsageFault {
        T value = read(option, parse);
        if (value == null) {
            throw Renewing.fault(command, option + " is missing, such as " + option + " " + example);
        }
        return value;
    }

    /** What was answered, or the refusal as a fault of the command. */
    <T> T answer(Parsed<T> parsed) throws UsageFault {
        if (parsed instanceof Parsed.Value<T> read) {
            return read.value();
        }
        throw Renewing.fault(command, ((Parsed.Refused<T>) parsed).message());
    }

    private <T> T value(String option, Parsed<T> parsed) throws UsageFault {
        if (parsed instanceof Parsed.Value<T> read) {
            return read.value();
        }
        throw Renewing.fault(command, option + ": " + ((Parsed.Refused<T>) parsed).message());
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

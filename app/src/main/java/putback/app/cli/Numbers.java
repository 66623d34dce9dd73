package putback.app.cli;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;
import putback.quantity.Parsed;
import putback.quantity.PlainNumber;

/** Reads plain numbers that are typed after a command. */
final class Numbers {
    private Numbers() {}

    /** An amount of money; null when it is not given. */
    static @Nullable BigDecimal money(String command, Arguments arguments, String name, BigDecimal least)
            throws UsageFault {
        BigDecimal most = BigDecimal.valueOf(1_000_000);
        return between(command, arguments, name, least, most, "an amount of money such as 60.00");
    }

    /** A number within limits; null when it is not given. */
    static @Nullable BigDecimal between(
            String command, Arguments arguments, String name, BigDecimal least, BigDecimal most, String what)
            throws UsageFault {
        String given = arguments.value(name).orElse(null);
        if (given == null) {
            return null;
        }
        Parsed<BigDecimal> parsed = PlainNumber.parse(given);
        if (parsed instanceof Parsed.Value<BigDecimal> number
                && number.value().compareTo(least) >= 0
                && number.value().compareTo(most) <= 0) {
            return number.value();
        }
        String wrong = parsed.refusal().isEmpty() ? "not \"" + given + "\"" : parsed.refusal();
        throw Renewing.fault(
                command,
                name + " is " + what + ", " + least.toPlainString() + " to " + most.toPlainString() + "; " + wrong);
    }

    /** A whole number within limits; what it is when not given. */
    static long whole(String command, Arguments arguments, String name, long least, long most, long otherwise)
            throws UsageFault {
        String given = arguments.value(name).orElse(null);
        if (given == null) {
            return otherwise;
        }
        try {
            long number = Long.parseLong(given);
            if (number >= least && number <= most) {
                return number;
            }
        } catch (NumberFormatException notOne) {
            // told below, like a number outside
        }
        throw Renewing.fault(
                command, name + " is a whole number from " + least + " to " + most + ", not \"" + given + "\"");
    }
}

package putback.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import org.jspecify.annotations.Nullable;

/** Reads a number with its unit. Every refusal names the text, what was asked for, and an example. */
final class Quantities {
    /** Nothing on a car comes near it, in any coherent unit. */
    private static final BigDecimal LARGEST = BigDecimal.valueOf(1_000_000_000L);

    private Quantities() {}

    /** The number in the coherent unit of its kind: N·m, mm, km, deg, min, N, kg, MPa, N/mm. */
    static Parsed<BigDecimal> parse(String text, Kind kind) {
        NumberText number = NumberText.of(text);
        if (number == null) {
            String comma = text.indexOf(',') > 0 ? "; write decimals with a point and thousands without a comma" : "";
            return refused(text, " is not " + kind.phrase() + comma, kind);
        }
        if (number.rest().isEmpty()) {
            return refused(text, " has no unit", kind);
        }
        if (isExponent(number.rest())) {
            return refused(text, " has an exponent; write the number out", kind);
        }
        Symbol symbol = Symbol.of(number.rest());
        if (symbol == null) {
            return refused(text, unknown(number.rest(), kind), kind);
        }
        if (symbol == Symbol.METRE && kind == Kind.DISTANCE) {
            return refused(text, " is in metres, which no odometer counts; if miles are meant write mi", kind);
        }
        if (symbol.kind() != kind) {
            return refused(text, " is " + symbol.kind().phrase() + ", not " + kind.phrase(), kind);
        }
        if (number.isFraction() && symbol != Symbol.INCH) {
            return refused(text, " is a fraction, which goes with inches only", kind);
        }
        BigDecimal coherent = coherent(number, symbol);
        return coherent.abs().compareTo(LARGEST) < 0
                ? new Parsed.Value<>(coherent)
                : refused(text, " is larger than anything on a car", kind);
    }

    private static BigDecimal coherent(NumberText number, Symbol symbol) {
        if (symbol.isCoherent()) {
            return number.numerator().scaleByPowerOfTen(symbol.tens());
        }
        BigDecimal converted = Conversions.toCoherent(number.numerator(), symbol);
        return number.isFraction() ? converted.divide(number.denominator(), MathContext.DECIMAL128) : converted;
    }

    private static boolean isExponent(String rest) {
        int digits = rest.length() > 1 && "+-".indexOf(rest.charAt(1)) >= 0 ? 2 : 1;
        return "eE".indexOf(rest.charAt(0)) >= 0 && rest.length() > digits && Character.isDigit(rest.charAt(digits));
    }

    private static String unknown(String unit, Kind kind) {
        String meant = meant(unit);
        return ": " + Shown.text(unit) + " is not a unit of "
                + kind.phrase().substring(kind.phrase().indexOf(' ') + 1)
                + (meant == null ? "" : ", maybe " + meant + " was meant");
    }

    /** The unit that differs from what was written in large and small letters only. */
    private static @Nullable String meant(String unit) {
        for (String known : new String[] {
            "N·m", "Nm", "lbf·ft", "ft-lb", "lbf·in", "in-lb", "kgf·m", "mm", "cm", "in", "km", "mi", "miles", "deg",
            "rad", "min", "kN", "N", "lbf", "kg", "lb", "MPa", "N/mm"
        }) {
            if (known.equalsIgnoreCase(unit)) {
                return known;
            }
        }
        return null;
    }

    private static <T> Parsed<T> refused(String text, String what, Kind kind) {
        return new Parsed.Refused<>("\"" + Shown.text(text) + "\"" + what + "; write it in " + kind.units()
                + ", such as " + kind.example());
    }
}

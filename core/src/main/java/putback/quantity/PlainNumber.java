package putback.quantity;

import java.math.BigDecimal;

/** A number without a unit: a share, a price, a count. */
public final class PlainNumber {
    private PlainNumber() {}

    /** Reads a decimal with point or comma, exactly; refuses exponents, fractions, NaN and anything after the number. */
    public static Parsed<BigDecimal> parse(String text) {
        NumberText number = NumberText.of(text);
        if (number == null || number.isFraction() || !number.rest().isEmpty()) {
            return new Parsed.Refused<>("\"" + Shown.text(text) + "\" is not a plain number; write it like 0.25 or 12"
                    + (text.indexOf(',') > 0 ? ", thousands without a comma" : ""));
        }
        return new Parsed.Value<>(number.numerator());
    }
}

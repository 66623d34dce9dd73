package putback.store.sheets;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;
import putback.quantity.Angle;
import putback.quantity.Distance;
import putback.quantity.Length;
import putback.quantity.Minutes;
import putback.quantity.Parsed;
import putback.quantity.PlainNumber;
import putback.quantity.Torque;
import putback.store.sheets.Node.Text;

/** The numbers and quantities of one thing in a sheet, and which of them are possible. Null where there is none. */
record Amounts(Fields fields) {
    private static final BigDecimal HIGHEST_PRICE = BigDecimal.valueOf(10_000_000);
    private static final BigDecimal LONGEST_MINUTES = BigDecimal.valueOf(100_000);
    private static final int PLACES_OF_A_PRICE = 4;
    private static final double TWO_TURNS = 720;
    private static final String MORE_THAN_NOTHING = "it has to be more than 0";
    private static final String NOT_NEGATIVE = "it cannot be negative";

    /** A plain number between two limits, both allowed. */
    @Nullable
    BigDecimal number(String key, BigDecimal low, BigDecimal high) {
        Text text = fields.single(key);
        if (text == null) {
            return null;
        }
        Parsed<BigDecimal> parsed = PlainNumber.parse(text.text());
        boolean possible = parsed instanceof Parsed.Value<BigDecimal> number
                && number.value().compareTo(low) >= 0
                && number.value().compareTo(high) <= 0;
        String limit = possible ? "" : "it may be from " + low.toPlainString() + " to " + high.toPlainString();
        return fields.told(text, key, parsed, possible, limit);
    }

    /** A whole number from 1; 1 when it is not there. */
    int count(String key, int most) {
        BigDecimal count = number(key, BigDecimal.ONE, BigDecimal.valueOf(most));
        if (count != null && count.stripTrailingZeros().scale() > 0) {
            fields.fault(key, count.toPlainString() + " is not a whole number");
            return 1;
        }
        return count == null ? 1 : count.intValueExact();
    }

    @Nullable
    BigDecimal price(String key) {
        BigDecimal price = number(key, BigDecimal.ZERO, HIGHEST_PRICE);
        if (price != null && price.scale() > PLACES_OF_A_PRICE) {
            fields.fault(key, price.toPlainString() + " is finer than money is; write it like 92.00");
        }
        return price;
    }

    /** From 0 to 1. */
    double share(String key, double otherwise) {
        return real(key, BigDecimal.ONE, otherwise);
    }

    double real(String key, BigDecimal high, double otherwise) {
        BigDecimal value = number(key, BigDecimal.ZERO, high);
        return value == null ? otherwise : value.doubleValue();
    }

    /** More than 0. */
    @Nullable
    Double positive(String key, BigDecimal high) {
        BigDecimal value = number(key, BigDecimal.ZERO, high);
        if (value != null && value.signum() == 0) {
            fields.fault(key, MORE_THAN_NOTHING);
            return null;
        }
        return value == null ? null : value.doubleValue();
    }

    /** A plain number is minutes; {@code 36 s} and {@code 0.5 h} are times too. Zero is allowed, less is not. */
    Minutes minutes(String key, Minutes otherwise) {
        Text text = fields.single(key);
        if (text == null) {
            return otherwise;
        }
        Parsed<Minutes> parsed = PlainNumber.parse(text.text()) instanceof Parsed.Value<BigDecimal> plain
                ? bounded(plain.value())
                : Minutes.parse(text.text());
        boolean possible = parsed instanceof Parsed.Value<Minutes> minutes
                && minutes.value().millionths() >= 0;
        Minutes minutes = fields.told(
                text, key, parsed, possible, "a time cannot be negative; write minutes, such as 0.6, or 36 s");
        return minutes == null ? otherwise : minutes;
    }

    private static Parsed<Minutes> bounded(BigDecimal minutes) {
        return minutes.abs().compareTo(LONGEST_MINUTES) > 0
                ? new Parsed.Refused<>(minutes.toPlainString() + " minutes are more than any step takes")
                : new Parsed.Value<>(Minutes.of(minutes));
    }

    /**
     * @param zero whether 0 is possible too
     */
    @Nullable
    Length length(String key, boolean zero) {
        Text text = fields.single(key);
        if (text == null) {
            return null;
        }
        Parsed<Length> parsed = Length.parse(text.text());
        boolean possible = parsed instanceof Parsed.Value<Length> length
                && (length.value().millimetres() > 0 || (zero && length.value().millimetres() == 0));
        return fields.told(text, key, parsed, possible, zero ? NOT_NEGATIVE : MORE_THAN_NOTHING);
    }

    @Nullable
    Distance distance(String key) {
        Text text = fields.single(key);
        if (text == null) {
            return null;
        }
        Parsed<Distance> parsed = Distance.parse(text.text());
        boolean possible = parsed instanceof Parsed.Value<Distance> distance
                && distance.value().kilometres() > 0;
        return fields.told(text, key, parsed, possible, MORE_THAN_NOTHING);
    }

    /** How far a fastener is turned on. */
    @Nullable
    Angle turn(String key) {
        Text text = fields.single(key);
        if (text == null) {
            return null;
        }
        Parsed<Angle> parsed = Angle.parse(text.text());
        boolean possible = parsed instanceof Parsed.Value<Angle> angle
                && angle.value().degrees() > 0
                && angle.value().degrees() <= TWO_TURNS;
        return fields.told(
                text, key, parsed, possible, "an angle of tightening is more than 0 and at most two turns (720 deg)");
    }

    /** What a fastener is tightened to. */
    @Nullable
    Torque torque(Text text, String key) {
        Parsed<Torque> parsed = Torque.parse(text.text());
        boolean possible =
                parsed instanceof Parsed.Value<Torque> torque && torque.value().newtonMetres() > 0;
        return fields.told(
                text,
                key,
                parsed,
                possible,
                "a torque is more than 0; leave it out where it is not known, or write snug");
    }

    /** One end of what a reading may be. */
    @Nullable
    Torque limit(Text text, String key) {
        Parsed<Torque> parsed = Torque.parse(text.text());
        boolean possible =
                parsed instanceof Parsed.Value<Torque> torque && torque.value().newtonMetres() >= 0;
        return fields.told(text, key, parsed, possible, NOT_NEGATIVE);
    }
}

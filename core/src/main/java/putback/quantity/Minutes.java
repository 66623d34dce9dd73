package putback.quantity;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * A length of working time, held as a whole number of millionths of a minute so that sums and comparisons are exact.
 *
 * @param millionths millionths of a minute (0.06 ms each); may be negative only as a difference
 */
public record Minutes(long millionths) implements Comparable<Minutes> {
    public static final Minutes ZERO = new Minutes(0);
    private static final int SCALE = 6;

    /** Exact for a decimal with up to six places; further places are rounded half up. */
    public static Minutes of(BigDecimal minutes) {
        return new Minutes(minutes.scaleByPowerOfTen(SCALE)
                .setScale(0, RoundingMode.HALF_UP)
                .longValueExact());
    }

    /** Reads a plain decimal such as {@code "0.35"}. */
    public static Minutes of(String minutes) {
        return of(new BigDecimal(minutes));
    }

    /** Reads {@code 3 min}, {@code 36 s}, {@code 1.5 h}; a plain number has no unit and is refused; never throws. */
    public static Parsed<Minutes> parse(String text) {
        Parsed<BigDecimal> number = Quantities.parse(text, Kind.TIME);
        return number instanceof Parsed.Value<BigDecimal> one
                ? new Parsed.Value<>(of(one.value()))
                : new Parsed.Refused<>(number.refusal());
    }

    public Minutes plus(Minutes other) {
        return new Minutes(Math.addExact(millionths, other.millionths));
    }

    public Minutes minus(Minutes other) {
        return new Minutes(Math.subtractExact(millionths, other.millionths));
    }

    public Minutes times(int count) {
        return new Minutes(Math.multiplyExact(millionths, (long) count));
    }

    public boolean isZero() {
        return millionths == 0;
    }

    /** The exact decimal, in minutes, without trailing zeros. */
    public BigDecimal decimal() {
        BigDecimal exact = BigDecimal.valueOf(millionths, SCALE).stripTrailingZeros();
        return exact.scale() < 0 ? exact.setScale(0) : exact;
    }

    @Override
    public int compareTo(Minutes other) {
        return Long.compare(millionths, other.millionths);
    }

    /** For example {@code 1.5 min}. */
    @Override
    public String toString() {
        return decimal().toPlainString() + " min";
    }
}

package putback.labour.price;

import java.math.BigDecimal;

/**
 * One line of an estimate.
 *
 * @param quantity how many of the unit
 * @param unit such as {@code min}, {@code each}, {@code %}; empty where there is none
 * @param amount in the garage's currency, to the hundredth
 */
public record Line(Kind kind, String text, BigDecimal quantity, String unit, BigDecimal amount) {
    /** To which of the sums a line belongs. */
    public enum Kind {
        LABOUR,
        PARTS,
        TAX
    }
}

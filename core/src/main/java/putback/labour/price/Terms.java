package putback.labour.price;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;
import putback.quantity.Parsed;

/**
 * On what terms a garage works.
 *
 * @param ratePerHour more than 0
 * @param taxPercent 0 to 100
 * @param taxEachLine whether tax is rounded line by line, and not once on the sum
 * @param markupPercent on what a part costs, 0 or more
 * @param sundries small things, 0 or more
 * @param subcontracted work of others, 0 or more
 * @param ceiling up to where the customer has said yes, tax included; null when nothing was said
 */
public record Terms(
        BigDecimal ratePerHour,
        BigDecimal taxPercent,
        boolean taxEachLine,
        BigDecimal markupPercent,
        BigDecimal sundries,
        BigDecimal subcontracted,
        @Nullable BigDecimal ceiling) {
    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    /** A rate and nothing else. */
    public static Terms of(BigDecimal ratePerHour) {
        return new Terms(ratePerHour, BigDecimal.ZERO, false, BigDecimal.ZERO, BigDecimal.ZERO, BigDecimal.ZERO, null);
    }

    /** These terms, or what is wrong with them. */
    public Parsed<Terms> checked() {
        String wrong = wrong();
        return wrong.isEmpty() ? new Parsed.Value<>(this) : new Parsed.Refused<>(wrong);
    }

    private String wrong() {
        if (ratePerHour.signum() <= 0) {
            return "a rate of " + ratePerHour.toPlainString() + " an hour prices nothing; it has to be more than 0";
        }
        if (taxPercent.signum() < 0 || taxPercent.compareTo(HUNDRED) > 0) {
            return "a tax of " + taxPercent.toPlainString() + " % is not possible; it may be 0 to 100";
        }
        if (markupPercent.signum() < 0 || sundries.signum() < 0 || subcontracted.signum() < 0) {
            return "markup, sundries and subcontracted work cannot be below 0";
        }
        return ceiling != null && ceiling.signum() < 0 ? "a ceiling of " + ceiling.toPlainString() + " is below 0" : "";
    }
}

package putback.proof;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * A published figure of a fastener on its way to a case.
 *
 * @param table file and citation
 * @param at row of the table, or example
 * @param quantity with its unit
 * @param printed as the source prints it
 */
record FastenerCase(String table, String at, String quantity, String printed) {
    static final String ROOM = "tightening";
    private static final int PLACES = 5;

    /** Ours may differ by half the last printed digit, or by a share of the figure where that is more. */
    Case within(double ours, double share, String because) {
        return make(ours, larger(Table.halfDigit(printed), share), because, false);
    }

    /** The publisher cuts digits off: ours may differ by a whole last digit, or by a share where that is more. */
    Case withinADigit(double ours, double share, String because) {
        return make(ours, larger(Table.halfDigit(printed).multiply(BigDecimal.valueOf(2)), share), because, false);
    }

    private BigDecimal larger(BigDecimal digits, double share) {
        return digits.max(expected().abs().multiply(BigDecimal.valueOf(share)))
                .round(new MathContext(3, RoundingMode.HALF_EVEN));
    }

    /** The source is wrong here, or belongs to an older edition, and why is known. */
    Case known(double ours, String because) {
        return make(ours, Table.halfDigit(printed), because, true);
    }

    private BigDecimal expected() {
        return new BigDecimal(printed);
    }

    private Case make(double ours, BigDecimal allowed, String because, boolean known) {
        return new Case(
                ROOM,
                (at + " " + quantity).replaceAll("[^A-Za-z0-9./]+", "-"),
                table,
                at,
                quantity,
                expected(),
                BigDecimal.valueOf(ours).round(new MathContext(PLACES, RoundingMode.HALF_EVEN)),
                allowed,
                because,
                known);
    }
}

package putback.proof;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * A figure about time, chance or money on its way to a case.
 *
 * @param source who says it
 * @param at section or example
 * @param quantity with its unit
 * @param printed as the source prints it
 */
record LabourFigure(String source, String at, String quantity, String printed) {
    static final String ROOM = "labour";
    private static final int DIGITS = 6;

    /** Ours may differ by half the last printed digit. */
    Case agrees(double ours) {
        return make(ours, Table.halfDigit(printed), "half the last printed digit", false);
    }

    Case within(double ours, String allowed, String because) {
        return make(ours, new BigDecimal(allowed), because, false);
    }

    /** The source is wrong here, and why is known. */
    Case known(double ours, String because) {
        return make(ours, Table.halfDigit(printed), because, true);
    }

    private Case make(double ours, BigDecimal allowed, String because, boolean known) {
        return new Case(
                ROOM,
                (at + " " + quantity).replaceAll("[^A-Za-z0-9./]+", "-"),
                source,
                at,
                quantity,
                new BigDecimal(printed),
                BigDecimal.valueOf(ours).round(new MathContext(DIGITS, RoundingMode.HALF_EVEN)),
                allowed,
                because,
                known);
    }
}

package putback.proof;

import java.math.BigDecimal;

/**
 * One figure of an outside source against ours.
 *
 * @param room of the core that is checked
 * @param id short and unique
 * @param source who says it
 * @param at table, file or page in the source
 * @param quantity what is measured, with its unit
 * @param expected the source's figure
 * @param ours what this program works out
 * @param allowed the largest difference that still agrees
 * @param because the reason for what is allowed, or for a disagreement that is known
 * @param known whether a disagreement is known and explained
 */
public record Case(
        String room,
        String id,
        String source,
        String at,
        String quantity,
        BigDecimal expected,
        BigDecimal ours,
        BigDecimal allowed,
        String because,
        boolean known) {

    /** Ours less the source's. */
    public BigDecimal difference() {
        return ours.subtract(expected);
    }

    public Verdict verdict() {
        if (difference().abs().compareTo(allowed) <= 0) {
            return Verdict.AGREES;
        }
        return known ? Verdict.KNOWN : Verdict.DISAGREES;
    }

    static Case exact(
            String room, String id, String source, String at, String quantity, long expected, BigDecimal ours) {
        return new Case(
                room,
                id,
                source,
                at,
                quantity,
                BigDecimal.valueOf(expected),
                ours,
                BigDecimal.ZERO,
                "whole numbers, no rounding",
                false);
    }
}

package putback.labour.seized;

import java.math.BigDecimal;
import java.util.List;
import putback.quantity.Minutes;

/**
 * A resort as it is weighed: one way of undoing a fastener that will not move. Attempts are taken as independent.
 *
 * @param id unique in its list
 * @param minutes it takes, whether it works or not; 0 or more
 * @param chance that it works, 0 to 1
 * @param breakChance that it damages something, 0 to 1, whether it works or not
 * @param breakPrice what that costs, 0 or more
 * @param scraps price of what it always destroys, 0 or more
 * @param when which ways of refusing it answers; empty for all
 * @param hazards to the things around it
 */
public record Attempt(
        String id,
        Minutes minutes,
        BigDecimal chance,
        BigDecimal breakChance,
        BigDecimal breakPrice,
        BigDecimal scraps,
        List<Refusal> when,
        List<Hazard> hazards) {
    private static final BigDecimal SIXTY = BigDecimal.valueOf(60);

    public Attempt {
        when = List.copyOf(when);
        hazards = List.copyOf(hazards);
    }

    /** One that damages and destroys nothing, and answers every refusal. */
    public static Attempt plain(String id, Minutes minutes, BigDecimal chance) {
        return new Attempt(
                id, minutes, chance, BigDecimal.ZERO, BigDecimal.ZERO, BigDecimal.ZERO, List.of(), List.of());
    }

    boolean hurts(Nearby nearby) {
        return hazards.stream().anyMatch(nearby::forbids);
    }

    boolean isCertain() {
        return chance.compareTo(BigDecimal.ONE) == 0;
    }

    /** Sixty times what trying it costs on average: exact, since an hour does not divide by sixty in decimals. */
    BigDecimal sixtyfoldCost(BigDecimal ratePerHour) {
        BigDecimal damage = breakChance.multiply(breakPrice).add(scraps);
        return ratePerHour.multiply(minutes.decimal()).add(SIXTY.multiply(damage));
    }
}

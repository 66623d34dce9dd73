package putback.ledger;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * A tightening with a torque wrench, for its upkeep.
 *
 * @param wrench as the toolbox calls it
 * @param at when; null where the ledger does not say
 * @param operations how often it was pulled: each fastener in each pass, at least 1
 */
public record WrenchUse(String wrench, @Nullable Instant at, int operations) {
    static WrenchUse of(Event tightening, String wrench, @Nullable Fixing fixing) {
        PlanStep.Tight tight = fixing == null ? null : fixing.tight();
        int count = fixing == null ? 1 : fixing.count();
        return new WrenchUse(wrench, tightening.at(), count * (tight == null ? 1 : tight.passes()));
    }
}

package putback.labour.seized;

import java.math.BigDecimal;
import java.util.List;
import putback.quantity.Minutes;

/**
 * Resorts where nobody has named any. Minutes and chances are judgement for one fastener of a chassis (common practice, no
 * source), there to be replaced by the garage's own.
 */
public final class UsualResorts {
    private UsualResorts() {}

    /**
     * @param fastenerPrice of a new bolt and nut: what a resort scraps or may break
     */
    public static List<Attempt> of(BigDecimal fastenerPrice) {
        Maker maker = new Maker(fastenerPrice);
        return List.of(
                maker.resort("wire-brush", "2", "0.15", "0", false, Refusal.STUCK),
                maker.resort("penetrant", "3", "0.35", "0", false, Refusal.STUCK),
                maker.resort("rock", "2", "0.25", "0.02", false, Refusal.STUCK),
                maker.resort("hammer", "4", "0.3", "0.02", false, Refusal.STUCK, Refusal.IN_BORE),
                maker.resort("grip", "4", "0.6", "0", false, Refusal.SPINS),
                maker.resort("heat", "5", "0.6", "0.1", false, Refusal.STUCK, Refusal.SPINS, Refusal.ROUNDS),
                maker.resort("cut", "15", "0.95", "0", true, Refusal.STUCK, Refusal.SPINS, Refusal.ROUNDS),
                maker.resort("press", "25", "0.7", "0.1", false, Refusal.IN_BORE),
                maker.resort("cut-both-sides", "30", "0.9", "0", true, Refusal.IN_BORE),
                maker.resort("weld-nut-on", "30", "0.7", "0.05", true, Refusal.ROUNDS, Refusal.SNAPPED),
                maker.resort("drill", "45", "0.6", "0.15", true, Refusal.SNAPPED));
    }

    private record Maker(BigDecimal price) {
        Attempt resort(String id, String minutes, String chance, String breaks, boolean scraps, Refusal... when) {
            return new Attempt(
                    id,
                    Minutes.of(minutes),
                    new BigDecimal(chance),
                    new BigDecimal(breaks),
                    price,
                    scraps ? price : BigDecimal.ZERO,
                    List.of(when),
                    UsualHazards.of(id));
        }
    }
}

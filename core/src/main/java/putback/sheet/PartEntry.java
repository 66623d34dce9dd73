package putback.sheet;

import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;
import putback.quantity.Minutes;

/**
 * A part as a sheet describes it.
 *
 * @param id without side
 * @param handling both ways together, when it leaves the car
 * @param price in the garage's currency; null when not given
 * @param soldAsAxleSet one bought item covers both sides
 * @param aside null when it cannot be moved aside
 * @param tether null unless it is flexible
 * @param life null when not known
 */
public record PartEntry(
        String id,
        Where where,
        String name,
        Minutes handling,
        @Nullable BigDecimal price,
        List<String> companions,
        boolean pair,
        boolean soldAsAxleSet,
        List<String> prepare,
        @Nullable Aside aside,
        @Nullable Tether tether,
        StoredEnergy storedEnergy,
        @Nullable Life life) {
    public PartEntry {
        companions = List.copyOf(companions);
        prepare = List.copyOf(prepare);
    }
}

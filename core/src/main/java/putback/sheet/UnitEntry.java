package putback.sheet;

import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Parts that are renewed in one piece, as a sheet describes them.
 *
 * @param price in the garage's currency; null when not given
 */
public record UnitEntry(
        String id,
        Where where,
        String name,
        List<String> parts,
        @Nullable BigDecimal price,
        boolean pair,
        boolean soldAsAxleSet,
        List<String> companions,
        List<String> prepare) {
    public UnitEntry {
        parts = List.copyOf(parts);
        companions = List.copyOf(companions);
        prepare = List.copyOf(prepare);
    }
}

package putback.labour.alongside;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;
import putback.plan.Bond;
import putback.plan.selection.Target;
import putback.quantity.Minutes;
import putback.sheet.Life;

/**
 * Something that could be renewed as well.
 *
 * @param extra what it adds when it is done now; below 0 where the whole gets shorter
 * @param alone what it takes later by itself
 * @param extraInAll the same with all set-ups, apart and together, and not only those on the way apart
 * @param bond why it usually goes with what is renewed; null where nothing says so
 * @param bought whether it is an axle set that the plan buys already, for the other side
 * @param proven whether all plans behind the two figures are proven to be the least
 */
public record Neighbour(
        Target target,
        Minutes extra,
        Minutes alone,
        Minutes extraInAll,
        @Nullable Bond bond,
        boolean bought,
        boolean proven) {
    /** What doing it now saves over doing it alone later. */
    public Minutes saved() {
        return alone.minus(extra);
    }

    /** In the garage's currency; null when not given. */
    public @Nullable BigDecimal price() {
        if (target instanceof Target.OfUnit one) {
            return one.unit().entry().price();
        }
        return ((Target.OfPart) target).part().entry().price();
    }

    /** Whether one bought item covers both sides, so that the price is paid once for the two. */
    public boolean soldAsAxleSet() {
        return target instanceof Target.OfUnit one
                ? one.unit().entry().soldAsAxleSet()
                : ((Target.OfPart) target).part().entry().soldAsAxleSet();
    }

    /** What it adds to the parts of the plan: nothing where its axle set is bought already; null when not known. */
    public @Nullable BigDecimal priceNow() {
        return bought ? new BigDecimal("0.00") : price();
    }

    /** Null when not known; a unit has none of its own. */
    public @Nullable Life life() {
        return target instanceof Target.OfPart one ? one.part().entry().life() : null;
    }
}

package putback.store.books;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * A part of a job, on its way.
 *
 * @param part id in the sheet; empty for one that the garage put down by itself, such as a fluid
 * @param price of one, as a decimal; empty when not known
 * @param pricedBy who gave the price; empty while it is an example of the sheet
 * @param state to order, ordered, arrived, compared (with the old one)
 * @param lookedBy who saw that it is the right one by number and look; empty while nobody has
 */
public record PartLine(
        String id,
        String job,
        String part,
        String name,
        int count,
        String price,
        String pricedBy,
        String supplier,
        String state,
        String lookedBy,
        int version) {
    /** One to be put down, with nothing known but what it is. */
    public static PartLine wanted(String job, String part, String name, int count) {
        return new PartLine("", job, part, name, count, "", "", "", "to order", "", 0);
    }

    /** Whether it is of the garage's own choosing, and not asked for by the plan. */
    public boolean isOwn() {
        return part.isEmpty();
    }

    /** Whether it lies here and was seen to be the right one. */
    public boolean isReady() {
        return state.equals("compared") || (state.equals("arrived") && !lookedBy.isEmpty());
    }

    /** What all of them cost; null while no price is known. */
    public @Nullable BigDecimal cost() {
        return price.isEmpty() ? null : new BigDecimal(price).multiply(BigDecimal.valueOf(count));
    }

    /** The same with a price that somebody gave. */
    public PartLine priced(String each, String by) {
        return new PartLine(id, job, part, name, count, each, by, supplier, state, lookedBy, version);
    }

    /** The same somewhere else on its way. */
    public PartLine at(String from, String now, String seenBy) {
        return new PartLine(id, job, part, name, count, price, pricedBy, from, now, seenBy, version);
    }

    /** The same as it was read at a version. */
    public PartLine at(int seen) {
        return new PartLine(id, job, part, name, count, price, pricedBy, supplier, state, lookedBy, seen);
    }
}

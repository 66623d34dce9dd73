package putback.plan.selection;

import java.util.BitSet;
import org.jspecify.annotations.Nullable;

/**
 * A choice of items that meets all clauses.
 *
 * @param items the items chosen
 * @param weight their weight
 */
record Cover(BitSet items, long weight) {
    static final Cover EMPTY = new Cover(new BitSet(), 0);

    Cover with(int item, long itemWeight) {
        BitSet larger = (BitSet) items.clone();
        larger.set(item);
        return new Cover(larger, weight + itemWeight);
    }

    Cover and(Cover other) {
        BitSet union = (BitSet) items.clone();
        union.or(other.items);
        return new Cover(union, weight + other.weight);
    }

    /** Null when the weight is not below the limit. */
    static @Nullable Cover below(@Nullable Cover cover, long limit) {
        return cover != null && cover.weight < limit ? cover : null;
    }
}

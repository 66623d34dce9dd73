package putback.plan.order;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.function.IntPredicate;
import org.jspecify.annotations.Nullable;
import putback.plan.access.Network;

/**
 * The chains of joints that connect parts, as masks of the joints that may still be opened. A part is apart from another
 * once of every chain one joint is open.
 */
final class Paths {
    private static final int MOST_STEPS = 20_000;

    private final Network network;
    private final long[] bit;
    private final boolean throughTethers;
    private final IntPredicate gone;
    private int steps;

    /**
     * @param bit for each joint its bit, 0 for one that stays closed
     * @param gone joints that count as open
     * @param throughTethers whether chains may pass through tethers
     */
    Paths(Network network, long[] bit, IntPredicate gone, boolean throughTethers) {
        this.network = network;
        this.bit = bit;
        this.gone = gone;
        this.throughTethers = throughTethers;
    }

    /**
     * The smallest masks of chains from a part to any of the others; one of them is 0 if they always hang together. Null
     * when there are too many chains to list.
     */
    long @Nullable [] between(int from, int... to) {
        BitSet goal = new BitSet();
        for (int part : to) {
            goal.set(part);
        }
        List<Long> found = new ArrayList<>();
        if (goal.get(from)) {
            return new long[] {0};
        }
        List<List<Long>> reached = new ArrayList<>();
        for (int part = 0; part < network.parts(); part++) {
            reached.add(new ArrayList<>());
        }
        steps = 0;
        walk(from, 0, goal, found, reached);
        if (steps >= MOST_STEPS) {
            return null;
        }
        return found.stream().mapToLong(Long::longValue).toArray();
    }

    /** Goes on along every chain whose mask no smaller one to the same part makes idle. */
    private void walk(int part, long mask, BitSet goal, List<Long> found, List<List<Long>> reached) {
        for (int joint : network.jointsOf(part)) {
            if (gone.test(joint) || ++steps >= MOST_STEPS) {
                continue;
            }
            long longer = mask | bit[joint];
            for (int next : network.joins(joint)) {
                if (next == part) {
                    continue;
                }
                if (goal.get(next)) {
                    keepSmallest(found, longer);
                } else if ((throughTethers || !network.isTether(next))
                        && !covered(found, longer)
                        && keepSmallest(reached.get(next), longer)) {
                    walk(next, longer, goal, found, reached);
                }
            }
        }
    }

    private static boolean covered(List<Long> masks, long mask) {
        for (long known : masks) {
            if ((known & mask) == known) {
                return true;
            }
        }
        return false;
    }

    /** Adds the mask unless a smaller one is there; drops larger ones. False when it was not needed. */
    private static boolean keepSmallest(List<Long> masks, long mask) {
        if (covered(masks, mask)) {
            return false;
        }
        masks.removeIf(known -> (known & mask) == mask);
        masks.add(mask);
        return true;
    }
}

package putback.plan.order;

import java.util.Arrays;
import java.util.BitSet;
import org.jspecify.annotations.Nullable;
import putback.plan.access.Network;

/**
 * The chains of joints that connect parts, as masks of the joints that may still be opened. A part is apart from another
 * once of every chain one joint is open.
 *
 * <p>Parts held together by joints that stay closed are one place; the chains run between places.
 */
final class Paths {
    private static final int MOST_STEPS = 20_000;

    private final Network network;
    private final boolean throughTethers;
    private final int[] place;
    private final int[][] next;
    private final long[][] mask;
    private final Masks[] reached;
    private int steps;

    /**
     * @param bit for each joint its bit, 0 for one that stays closed
     * @param gone joints that count as open
     * @param throughTethers whether chains may pass through tethers
     */
    Paths(Network network, long[] bit, BitSet gone, boolean throughTethers) {
        this.network = network;
        this.throughTethers = throughTethers;
        this.place = new int[network.parts()];
        this.next = new int[network.parts()][0];
        this.mask = new long[network.parts()][0];
        this.reached = new Masks[network.parts()];
        for (int part = 0; part < place.length; part++) {
            place[part] = part;
            reached[part] = new Masks();
        }
        for (int joint = 0; joint < network.joints(); joint++) {
            if (bit[joint] == 0 && !gone.get(joint)) {
                merge(network.joins(joint));
            }
        }
        for (int joint = 0; joint < network.joints(); joint++) {
            if (!gone.get(joint)) {
                connect(network.joins(joint), bit[joint]);
            }
        }
    }

    private int place(int part) {
        int at = part;
        while (place[at] != at) {
            at = place[at];
        }
        return at;
    }

    private boolean passes(int part) {
        return throughTethers || !network.isTether(part);
    }

    private void merge(int[] joined) {
        int first = -1;
        for (int part : joined) {
            if (passes(part)) {
                if (first >= 0) {
                    place[Math.max(place(first), place(part))] = Math.min(place(first), place(part));
                }
                first = part;
            }
        }
    }

    private void connect(int[] joined, long bit) {
        for (int one : joined) {
            for (int other : joined) {
                if (place(one) != place(other)) {
                    int from = place(one);
                    int at = next[from].length;
                    next[from] = Arrays.copyOf(next[from], at + 1);
                    mask[from] = Arrays.copyOf(mask[from], at + 1);
                    next[from][at] = place(other);
                    mask[from][at] = bit;
                }
            }
        }
    }

    /**
     * The smallest masks of chains from a part to any of the others; one of them is 0 if they always hang together. Null
     * when there are too many chains to list.
     */
    long @Nullable [] between(int from, int... to) {
        BitSet goal = new BitSet();
        for (int part : to) {
            goal.set(place(part));
        }
        if (goal.get(place(from))) {
            return new long[] {0};
        }
        for (Masks masks : reached) {
            masks.clear();
        }
        Masks found = new Masks();
        steps = 0;
        walk(place(from), 0, goal, found);
        return steps >= MOST_STEPS ? null : found.toArray();
    }

    /** Goes on along every chain whose mask no smaller one to the same place makes idle. */
    private void walk(int at, long soFar, BitSet goal, Masks found) {
        for (int i = 0; i < next[at].length; i++) {
            if (++steps >= MOST_STEPS) {
                return;
            }
            long longer = soFar | mask[at][i];
            int to = next[at][i];
            if (goal.get(to)) {
                found.keepSmallest(longer);
            } else if (passes(to) && !found.covers(longer) && reached[to].keepSmallest(longer)) {
                walk(to, longer, goal, found);
            }
        }
    }

    /** Masks of which none contains another. */
    private static final class Masks {
        private long[] masks = new long[4];
        private int size;

        void clear() {
            size = 0;
        }

        boolean covers(long mask) {
            for (int i = 0; i < size; i++) {
                if ((masks[i] & mask) == masks[i]) {
                    return true;
                }
            }
            return false;
        }

        /** Adds the mask unless a smaller one is there, and drops larger ones; false when it was not needed. */
        boolean keepSmallest(long mask) {
            if (covers(mask)) {
                return false;
            }
            int kept = 0;
            for (int i = 0; i < size; i++) {
                if ((masks[i] & mask) != mask) {
                    masks[kept++] = masks[i];
                }
            }
            size = kept;
            if (size == masks.length) {
                masks = Arrays.copyOf(masks, size * 2);
            }
            masks[size++] = mask;
            return true;
        }

        long[] toArray() {
            return Arrays.copyOf(masks, size);
        }
    }
}

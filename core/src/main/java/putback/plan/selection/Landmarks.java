package putback.plan.selection;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;

/**
 * Finds sets of items of which every plan contains one.
 *
 * <p>Starting from items with which the goal cannot be opened, items are added, cheap ones first and in halves, as long
 * as the goal stays out of reach. What is left out in the end is such a set, and a smallest one: any single item of it
 * would open the goal.
 */
final class Landmarks {
    private final Items items;
    private final Opening opening;
    private final BitSet usable;

    Landmarks(Items items, Opening opening, BitSet usable) {
        this.items = items;
        this.opening = opening;
        this.usable = usable;
    }

    /**
     * Items of which every plan that opens the goal needs one; empty when no plan opens it.
     *
     * @param allowed items that together do not open the goal
     * @param planned joints that are opened for certain and may have to come ahead of others
     * @param goal joints to open
     * @param preferOut items to leave out of the answer where that can be
     * @param worth what an item still costs: cheap ones are left out of the answer first
     */
    BitSet missing(BitSet allowed, BitSet planned, BitSet goal, BitSet preferOut, long[] worth) {
        BitSet candidates = (BitSet) usable.clone();
        candidates.andNot(allowed);
        int[] order = cheapFirst(candidates, preferOut, worth);
        Growth growth = new Growth((BitSet) allowed.clone(), planned, goal);
        if (!growth.opensWith(order)) {
            return new BitSet();
        }
        growth.grow(order);
        candidates.andNot(growth.inside);
        return candidates;
    }

    private static int[] cheapFirst(BitSet candidates, BitSet preferOut, long[] worth) {
        List<Integer> items = new ArrayList<>();
        for (int item = candidates.nextSetBit(0); item >= 0; item = candidates.nextSetBit(item + 1)) {
            items.add(item);
        }
        // the sort is stable: equals stay in the order of their numbers
        items.sort(new CheapFirst(preferOut, worth));
        int[] order = new int[items.size()];
        for (int i = 0; i < order.length; i++) {
            order[i] = items.get(i);
        }
        return order;
    }

    private record CheapFirst(BitSet preferOut, long[] worth) implements Comparator<Integer> {
        @Override
        public int compare(Integer a, Integer b) {
            return preferOut.get(a) == preferOut.get(b)
                    ? Long.compare(worth[a], worth[b])
                    : Boolean.compare(preferOut.get(b), preferOut.get(a));
        }
    }

    /** Items added so far, and what they open. */
    private final class Growth {
        private final BitSet inside;
        private final BitSet planned;
        private final BitSet goal;
        private BitSet open;

        Growth(BitSet inside, BitSet planned, BitSet goal) {
            this.inside = inside;
            this.planned = planned;
            this.goal = goal;
            this.open = opening.opened(inside, new BitSet(), planned);
        }

        boolean opensWith(int[] more) {
            return contains(openWith(more), goal);
        }

        private BitSet openWith(int[] more) {
            BitSet larger = (BitSet) inside.clone();
            for (int item : more) {
                larger.set(item);
            }
            return opening.openedUntil(goal, larger, open, planned);
        }

        /** Takes in all items that leave the goal out of reach; the whole of them together is known to open it. */
        void grow(int[] order) {
            if (order.length == 1) {
                return;
            }
            int half = order.length / 2;
            take(Arrays.copyOfRange(order, 0, half));
            take(Arrays.copyOfRange(order, half, order.length));
        }

        private void take(int[] some) {
            BitSet larger = openWith(some);
            if (contains(larger, goal)) {
                grow(some);
                return;
            }
            open = larger;
            for (int item : some) {
                inside.set(item);
            }
        }
    }

    static boolean contains(BitSet large, BitSet small) {
        for (int i = small.nextSetBit(0); i >= 0; i = small.nextSetBit(i + 1)) {
            if (!large.get(i)) {
                return false;
            }
        }
        return true;
    }

    /** The weights again, for a caller that splits them over sets. */
    long[] freshWorth() {
        return items.weight.clone();
    }
}

package putback.plan.selection;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import org.jspecify.annotations.Nullable;
import putback.plan.access.Network;

/**
 * Chains that still hold two parts together: of each chain one joint has to be opened, or one part that it runs through
 * the body with has to be let go, before the two are apart.
 */
final class Chains {
    private final Network network;
    private final Items items;
    private final BitSet forbidden;
    private final int[] cameFrom;
    private final int[] cameBy;
    private final int[] queue;
    private final int[][] joins;
    private final int[][] jointsOf;

    Chains(Demand demand, Items items) {
        this.network = demand.network();
        this.items = items;
        this.forbidden = demand.forbidden();
        this.cameFrom = new int[items.parts];
        this.cameBy = new int[items.parts];
        this.queue = new int[items.parts];
        this.joins = new int[items.joints][];
        this.jointsOf = new int[items.parts][];
        for (int joint = 0; joint < items.joints; joint++) {
            joins[joint] = network.joins(joint);
        }
        for (int part = 0; part < items.parts; part++) {
            jointsOf[part] = network.jointsOf(part);
        }
    }

    /**
     * Chains from a part to any of the others that share no item, as sets of items.
     *
     * @param gone joints that are open and parts that are let go, as items
     * @param throughTethers whether a chain may pass through tethers
     */
    List<BitSet> apart(int from, int[] to, BitSet gone, boolean throughTethers) {
        List<BitSet> chains = new ArrayList<>();
        BitSet goal = new BitSet();
        for (int part : to) {
            goal.set(part);
        }
        if (goal.get(from)) {
            chains.add(new BitSet());
            return chains;
        }
        BitSet cut = (BitSet) gone.clone();
        BitSet chain = shortest(from, goal, cut, throughTethers);
        while (chain != null) {
            chains.add(chain);
            cut.or(chain);
            chain = chain.isEmpty() ? null : shortest(from, goal, cut, throughTethers);
        }
        return chains;
    }

    private @Nullable BitSet shortest(int from, BitSet goal, BitSet cut, boolean throughTethers) {
        Arrays.fill(cameFrom, -1);
        cameFrom[from] = from;
        int head = 0;
        int tail = 0;
        queue[tail++] = from;
        while (head < tail) {
            int part = queue[head++];
            boolean passes = part == from || throughTethers || !network.isTether(part);
            if (goal.get(part)) {
                return back(part, from);
            }
            if (passes) {
                tail = spread(part, cut, tail);
            }
        }
        return null;
    }

    private int spread(int part, BitSet cut, int tailSoFar) {
        int tail = tailSoFar;
        for (int joint : jointsOf[part]) {
            if (!cut.get(joint)) {
                for (int next : joins[joint]) {
                    tail = reach(next, part, joint, tail);
                }
            }
        }
        if (part == 0) {
            for (int next = 1; next < items.parts; next++) {
                tail = cut.get(items.handling(next)) ? tail : reach(next, 0, items.handling(next), tail);
            }
        } else if (!cut.get(items.handling(part))) {
            tail = reach(0, part, items.handling(part), tail);
        }
        return tail;
    }

    private int reach(int next, int part, int by, int tail) {
        if (cameFrom[next] >= 0) {
            return tail;
        }
        cameFrom[next] = part;
        cameBy[next] = by;
        queue[tail] = next;
        return tail + 1;
    }

    /** What never opens is no way out and not in the set. */
    private BitSet back(int goal, int from) {
        BitSet chain = new BitSet();
        for (int part = goal; part != from; part = cameFrom[part]) {
            int by = cameBy[part];
            if (by >= items.joints || !forbidden.get(by)) {
                chain.set(by);
            }
        }
        return chain;
    }
}

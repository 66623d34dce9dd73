package putback.plan.selection;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import putback.plan.access.Accessibility;
import putback.plan.access.Network;
import putback.plan.access.Numbers;
import putback.plan.access.Ties;

/** Says what keeps a joint from being opened, as clauses that hold for every plan that opens it. */
final class Hindrances {
    private final Network network;
    private final Items items;
    private final Chains chains;
    private final Ties ties;

    Hindrances(Demand demand, Items items) {
        this.network = demand.network();
        this.items = items;
        this.chains = new Chains(demand, items);
        this.ties = new Ties(network);
    }

    /**
     * If the joint is opened, one item of each set is in the plan.
     *
     * @param allowed items of a plan that leaves the joint stuck
     * @param open the joints that it opens
     */
    List<BitSet> of(int joint, BitSet allowed, BitSet open) {
        List<BitSet> needed = new ArrayList<>();
        for (int item : items.payments(joint)) {
            if (!allowed.get(item)) {
                needed.add(Items.single(item));
            }
        }
        for (int before : network.after(joint)) {
            if (!open.get(before)) {
                needed.add(Items.single(before));
            }
        }
        BitSet gone = (BitSet) open.clone();
        for (int part : Numbers.in(items.handled(allowed))) {
            gone.set(items.handling(part));
        }
        ties.rebuild(open, items.handled(allowed));
        for (int[] clause : network.clauses(joint)) {
            needed.addAll(clear(joint, clause, allowed, open, gone));
        }
        if (network.isBench(joint)) {
            for (int part : network.joins(joint)) {
                needed.addAll(chains.apart(part, new int[] {0}, gone, true));
            }
        }
        return needed;
    }

    /** One of the parts has to be clear: a chain of each is joined into one set, with what moves it aside. */
    private List<BitSet> clear(int joint, int[] clause, BitSet allowed, BitSet open, BitSet gone) {
        List<List<BitSet>> each = new ArrayList<>();
        int most = Integer.MAX_VALUE;
        for (int part : clause) {
            if (Accessibility.isAside(network, part, open, items.asides(allowed)) || ties.separated(part, joint)) {
                return List.of();
            }
            List<BitSet> own = chains.apart(part, network.joins(joint), gone, false);
            BitSet aside = asideMissing(part, allowed, open);
            for (BitSet chain : own) {
                chain.or(aside);
            }
            most = Math.min(most, own.size());
            each.add(own);
        }
        List<BitSet> needed = new ArrayList<>();
        for (int i = 0; i < (each.isEmpty() ? 0 : most); i++) {
            BitSet union = new BitSet();
            for (List<BitSet> own : each) {
                union.or(own.get(i));
            }
            needed.add(union);
        }
        return needed;
    }

    /** One item without which the part cannot be moved aside; none when it never can. */
    private BitSet asideMissing(int part, BitSet allowed, BitSet open) {
        if (!network.canGoAside(part)) {
            return new BitSet();
        }
        if (!allowed.get(items.aside(part))) {
            return Items.single(items.aside(part));
        }
        for (int joint : network.asideOpens(part)) {
            if (!open.get(joint)) {
                return Items.single(joint);
            }
        }
        return new BitSet();
    }
}

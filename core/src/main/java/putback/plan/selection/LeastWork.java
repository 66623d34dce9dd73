package putback.plan.selection;

import java.util.BitSet;
import putback.plan.access.Network;

/**
 * The cheapest set of items with which every required joint opens in a sound order, exactly.
 *
 * <p>Method: implicit hitting set. Sets of items of which every plan needs one are collected (see {@link Landmarks});
 * the cheapest choice that meets them all is a lower bound, and where it opens everything soundly it is the least work
 * there is. Where it does not, what is missing gives further sets. What depends on the choice itself (a joint that
 * comes ahead of another, a part that falls free, a part that is ruined) enters as clauses that hold if that choice is
 * made.
 */
public final class LeastWork {
    /** What a millionth of a minute weighs in a rank. */
    public static final long SCALE = Items.SCALE;

    /** A limit above every rank. */
    public static final long NO_LIMIT = CoverSolver.NO_LIMIT;

    /** A cover that takes more nodes than this is found by the other method. */
    private static final long EASY = 40;

    private final Demand demand;
    private final Network network;
    private final Items items;
    private final Opening opening;
    private final Known known = new Known();
    private final Lacks lacks;
    private final BitSet free = new BitSet();
    private final Effort effort;
    private long nodes;

    /**
     * @param effort what is found when it is used up is given without proof
     */
    public LeastWork(Demand demand, Effort effort) {
        this.effort = effort;
        this.demand = demand;
        this.network = demand.network();
        this.items = new Items(demand);
        this.opening = new Opening(demand, items, effort);
        BitSet usable = usable();
        this.lacks = new Lacks(demand, items, opening, usable, known);
        for (int item = usable.nextSetBit(items.joints); item >= 0; item = usable.nextSetBit(item + 1)) {
            free.set(item, items.weight[item] == 0);
        }
        BitSet goal = demand.required();
        for (int joint = goal.nextSetBit(0); joint >= 0; joint = goal.nextSetBit(joint + 1)) {
            known.add(Clause.oneOf(Items.single(joint)));
        }
    }

    private BitSet usable() {
        BitSet usable = new BitSet();
        usable.set(0, items.count);
        usable.andNot(demand.forbidden());
        for (int part = 0; part < items.parts; part++) {
            usable.set(items.aside(part), network.canGoAside(part));
        }
        return usable;
    }

    /**
     * The least work among plans of the given kind.
     *
     * @param within joints and asides that are in or out beyond what is required
     * @param limit choices whose rank is not below it are not looked for
     */
    public Least least(Within within, long limit) {
        BitSet in = in(within);
        BitSet out = out(within);
        while (true) {
            CoverSolver solver = new CoverSolver(items.weight, EASY);
            Cover cover = solver.least(known.inOrder(), in, out, limit);
            nodes += solver.nodes();
            if (solver.exhausted()) {
                return hard(in, out, limit);
            }
            if (cover == null) {
                return new Least(null, NO_LIMIT);
            }
            BitSet chosen = withFree(cover.items(), out);
            if (!lacks.learn(chosen, out)) {
                return new Least(choice(chosen, in, cover.weight()), cover.weight());
            }
        }
    }

    private Least hard(BitSet in, BitSet out, long limit) {
        CoverTree tree = new CoverTree(items.weight, known.inOrder(), new Lacking(out), effort);
        Cover cover = tree.least(in, out, limit);
        nodes += tree.nodes();
        return cover == null
                ? new Least(null, tree.bound())
                : new Least(choice(withFree(cover.items(), out), in, cover.weight()), tree.bound());
    }

    private BitSet withFree(BitSet cover, BitSet out) {
        BitSet chosen = (BitSet) cover.clone();
        chosen.or(free);
        chosen.andNot(out);
        return chosen;
    }

    /** What choices without some items lack. */
    private final class Lacking implements CoverTree.Doubts {
        private final BitSet out;

        Lacking(BitSet out) {
            this.out = out;
        }

        @Override
        public boolean learn(BitSet cover) {
            return lacks.learn(withFree(cover, out), out);
        }
    }

    /** How much room there is in a kind of choice, as far as is known so far. */
    public Room room(Within within) {
        return new Room(items, known, in(within), out(within));
    }

    /** Nodes of search so far, over all questions. */
    public long nodes() {
        return nodes;
    }

    private BitSet in(Within within) {
        BitSet in = (BitSet) within.inJoints().clone();
        setAsides(in, within.inAsides());
        return in;
    }

    private BitSet out(Within within) {
        BitSet out = (BitSet) within.outJoints().clone();
        out.or(demand.forbidden());
        setAsides(out, within.outAsides());
        return out;
    }

    private void setAsides(BitSet set, BitSet parts) {
        for (int part = parts.nextSetBit(0); part >= 0; part = parts.nextSetBit(part + 1)) {
            set.set(items.aside(part));
        }
    }

    private Choice choice(BitSet chosen, BitSet in, long weight) {
        BitSet joints = chosen.get(0, items.joints);
        BitSet asides = neededAsides(chosen, in);
        return new Choice(joints, asides, weight / Items.SCALE, weight);
    }

    /** Asides that cost nothing are named only where they are needed or asked for. */
    private BitSet neededAsides(BitSet chosen, BitSet in) {
        BitSet joints = chosen.get(0, items.joints);
        BitSet kept = (BitSet) chosen.clone();
        for (int part = 0; part < items.parts; part++) {
            int item = items.aside(part);
            if (kept.get(item) && !in.get(item)) {
                kept.clear(item);
                boolean opens = Landmarks.contains(opening.opened(kept, new BitSet(), joints), joints);
                kept.set(item, !opens);
            }
        }
        return items.asides(kept);
    }
}

package putback.plan.selection;

import java.util.BitSet;

/**
 * How much room there is beside what a kind of choice has for certain, asked for one more joint or aside at a time: what
 * the clauses say of the kind itself is worked out once.
 */
public final class Room {
    /** Nodes to tell whether there is room. */
    private static final long TELLING = 2_000;

    private final Items items;
    private final Known known;
    private final Residue residue;
    private final boolean possible;
    private final long certain;
    private final Bound rest;
    private long nodes;

    Room(Items items, Known known, BitSet in, BitSet out) {
        this.items = items;
        this.known = known;
        this.residue = new Residue(items.weight, known.inOrder(), in, out);
        this.possible = residue.settle();
        this.certain = residue.forcedCover(in).weight();
        this.rest = new Bound(items.weight, residue.clauses());
    }

    /**
     * Whether there may be a choice of this kind with the joint below the limit; true as well where that would take long
     * to tell.
     *
     * @param leastRank the least rank of this kind; a joint that no clause asks for adds all of its weight to it
     */
    public boolean mayHoldJoint(int joint, long leastRank, long limit) {
        return (known.asksFor(joint) || leastRank + items.weight[joint] < limit) && mayHold(joint, limit);
    }

    /** The same for a part that is moved aside. */
    public boolean mayHoldAside(int part, long limit) {
        return mayHold(items.aside(part), limit);
    }

    private boolean mayHold(int item, long limit) {
        if (!possible || residue.out().get(item)) {
            return false;
        }
        if (certain + rest.value() + rest.extra(item) >= limit) {
            return false;
        }
        BitSet more = residue.isIn(item) ? new BitSet() : Items.single(item);
        CoverSolver solver = new CoverSolver(items.weight, TELLING);
        Cover cover = solver.least(residue.clauses(), more, residue.out(), limit - certain);
        nodes += solver.nodes();
        return cover != null || solver.exhausted();
    }

    /** Nodes of search so far. */
    public long nodes() {
        return nodes;
    }
}

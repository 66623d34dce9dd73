package putback.plan.selection;

import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Chooses the items of least weight that meet all clauses, by branch and bound, exactly.
 *
 * <p>At each node clauses with one way out are followed, clauses and items that others make idle are dropped, parts
 * that share no item are solved apart, and the rest is bounded by sharing the items' weights among the clauses.
 */
final class CoverSolver {
    static final long NO_LIMIT = Long.MAX_VALUE / 4;

    private final long[] weight;
    private final long budget;
    private long nodes;

    /**
     * @param budget nodes after which the search gives up
     */
    CoverSolver(long[] weight, long budget) {
        this.weight = weight;
        this.budget = budget;
    }

    /** Whether the last answers were given up on before they were proven. */
    boolean exhausted() {
        return nodes >= budget;
    }

    long nodes() {
        return nodes;
    }

    /** The cover of least weight below the limit, or null when there is none. */
    @Nullable
    Cover least(List<Clause> clauses, BitSet in, BitSet out, long limit) {
        Residue residue = new Residue(weight, clauses, in, out);
        if (!residue.simplify()) {
            return null;
        }
        Cover chosen = residue.forcedCover(in);
        Cover rest = solve(residue.clauses(), limit - chosen.weight());
        return rest == null ? null : Cover.below(chosen.and(rest), limit);
    }

    private @Nullable Cover solve(List<Clause> clauses, long limit) {
        if (limit <= 0) {
            return null;
        }
        if (clauses.isEmpty()) {
            return Cover.EMPTY;
        }
        List<List<Clause>> groups = Groups.of(clauses);
        if (groups.size() == 1) {
            return branch(clauses, limit);
        }
        long[] bounds = new long[groups.size()];
        long open = 0;
        for (int i = 0; i < bounds.length; i++) {
            bounds[i] = new Bound(weight, groups.get(i)).value();
            open += bounds[i];
        }
        Cover all = Cover.EMPTY;
        for (int i = 0; i < bounds.length; i++) {
            open -= bounds[i];
            Cover part = branch(groups.get(i), limit - all.weight() - open);
            if (part == null) {
                return null;
            }
            all = all.and(part);
        }
        return Cover.below(all, limit);
    }

    private @Nullable Cover branch(List<Clause> clauses, long limit) {
        Bound bound = new Bound(weight, clauses);
        if (bound.value() >= limit || exhausted()) {
            return null;
        }
        nodes++;
        Clause tightest = tightest(clauses);
        if (tightest == null) {
            return Cover.EMPTY;
        }
        BitSet tooDear = tooDear(clauses, bound, limit);
        if (!tooDear.isEmpty()) {
            return decided(clauses, new BitSet(), tooDear, limit);
        }
        int item = busiest(tightest, clauses);
        BitSet one = new BitSet();
        one.set(item);
        Cover with = decided(clauses, one, new BitSet(), limit);
        Cover without = decided(clauses, new BitSet(), one, with == null ? limit : with.weight());
        return without != null ? without : with;
    }

    /** Items that no choice below the limit can have. */
    private static BitSet tooDear(List<Clause> clauses, Bound bound, long limit) {
        BitSet tooDear = new BitSet();
        long room = limit - bound.value();
        for (Clause clause : clauses) {
            for (int item : clause.oneOf()) {
                if (bound.extra(item) >= room) {
                    tooDear.set(item);
                }
            }
        }
        return tooDear;
    }

    private @Nullable Cover decided(List<Clause> clauses, BitSet in, BitSet out, long limit) {
        Residue residue = new Residue(weight, clauses, in, out);
        if (!residue.simplify()) {
            return null;
        }
        Cover chosen = residue.forcedCover(in);
        Cover rest = solve(residue.clauses(), limit - chosen.weight());
        return rest == null ? null : Cover.below(chosen.and(rest), limit);
    }

    /** The shortest clause that asks for an item now; null when all wait for items nobody has to choose. */
    private static @Nullable Clause tightest(List<Clause> clauses) {
        Clause best = null;
        for (Clause clause : clauses) {
            if (clause.given().length == 0 && (best == null || clause.oneOf().length < best.oneOf().length)) {
                best = clause;
            }
        }
        return best;
    }

    private int busiest(Clause tightest, List<Clause> clauses) {
        int best = tightest.oneOf()[0];
        double bestWorth = -1;
        for (int item : tightest.oneOf()) {
            int uses = 0;
            for (Clause clause : clauses) {
                uses += Arrays.binarySearch(clause.oneOf(), item) >= 0 ? 1 : 0;
            }
            double worth = uses / (double) (weight[item] + 1);
            if (worth > bestWorth) {
                best = item;
                bestWorth = worth;
            }
        }
        return best;
    }
}

package putback.plan.selection;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.LinkedHashSet;
import java.util.List;

/** What is left of clauses once some items are in and some are out, made as small as can be. */
final class Residue {
    private final long[] weight;
    private final BitSet in;
    private final BitSet out;
    private List<Clause> clauses;

    Residue(long[] weight, List<Clause> clauses, BitSet in, BitSet out) {
        this.weight = weight;
        this.clauses = clauses;
        this.in = (BitSet) in.clone();
        this.out = (BitSet) out.clone();
    }

    List<Clause> clauses() {
        return clauses;
    }

    /** The items that are in: the given ones, and those forced since. */
    Cover forcedCover(BitSet given) {
        BitSet all = (BitSet) in.clone();
        all.or(given);
        long sum = 0;
        for (int item = all.nextSetBit(0); item >= 0; item = all.nextSetBit(item + 1)) {
            sum += weight[item];
        }
        return new Cover(all, sum);
    }

    boolean isIn(int item) {
        return in.get(item);
    }

    /** The items that are out: the given ones, and those that no choice can have any more. */
    BitSet out() {
        return out;
    }

    /** Makes the clauses small for choices of this kind with whatever more in or out; false when they cannot be met. */
    boolean settle() {
        if (!follow()) {
            return false;
        }
        dropImplied();
        return true;
    }

    /** Makes them small for the cheapest choice of this kind; false when they cannot be met. */
    boolean simplify() {
        do {
            if (!follow()) {
                return false;
            }
            dropImplied();
        } while (dropIdleItems());
        return true;
    }

    /** Follows clauses with one way out until none is left. */
    private boolean follow() {
        boolean moved = true;
        while (moved) {
            moved = false;
            LinkedHashSet<Clause> kept = new LinkedHashSet<>();
            for (Clause clause : clauses) {
                Clause rest = rest(clause);
                if (rest == null) {
                    continue;
                }
                if (rest.oneOf().length == 0 && rest.given().length == 0) {
                    return false;
                }
                if (rest.given().length == 0 && rest.oneOf().length == 1) {
                    in.set(rest.oneOf()[0]);
                    moved = true;
                } else if (rest.oneOf().length == 0 && rest.given().length == 1) {
                    out.set(rest.given()[0]);
                    moved = true;
                } else {
                    kept.add(rest);
                }
            }
            clauses = new ArrayList<>(kept);
        }
        return true;
    }

    /** The clause without items that are decided; null when it is met. */
    private @org.jspecify.annotations.Nullable Clause rest(Clause clause) {
        int oneOf = 0;
        for (int item : clause.oneOf()) {
            if (in.get(item)) {
                return null;
            }
            oneOf += out.get(item) ? 0 : 1;
        }
        int given = 0;
        for (int item : clause.given()) {
            if (out.get(item)) {
                return null;
            }
            given += in.get(item) ? 0 : 1;
        }
        if (oneOf == clause.oneOf().length && given == clause.given().length) {
            return clause;
        }
        return new Clause(without(clause.given(), in, given), without(clause.oneOf(), out, oneOf));
    }

    private static int[] without(int[] items, BitSet gone, int left) {
        if (left == items.length) {
            return items;
        }
        int[] kept = new int[left];
        int next = 0;
        for (int item : items) {
            if (!gone.get(item)) {
                kept[next++] = item;
            }
        }
        return kept;
    }

    private void dropImplied() {
        List<Clause> byLength = new ArrayList<>(clauses);
        byLength.sort(new ByLength());
        List<Clause> kept = new ArrayList<>();
        for (Clause clause : byLength) {
            if (!isImplied(clause, kept)) {
                kept.add(clause);
            }
        }
        clauses = kept;
    }

    private static boolean isImplied(Clause clause, List<Clause> kept) {
        for (Clause stronger : kept) {
            if (clause.impliedBy(stronger)) {
                return true;
            }
        }
        return false;
    }

    /** Puts out items that another, no dearer one replaces wherever they help. True when one went. */
    private boolean dropIdleItems() {
        BitSet inGiven = new BitSet();
        int highest = -1;
        for (Clause clause : clauses) {
            for (int item : clause.given()) {
                inGiven.set(item);
            }
            highest = Math.max(highest, clause.oneOf().length == 0 ? -1 : clause.oneOf()[clause.oneOf().length - 1]);
        }
        BitSet[] uses = new BitSet[highest + 1];
        for (int i = 0; i < clauses.size(); i++) {
            for (int item : clauses.get(i).oneOf()) {
                if (uses[item] == null) {
                    uses[item] = new BitSet();
                }
                uses[item].set(i);
            }
        }
        boolean dropped = false;
        for (int item = 0; item < uses.length; item++) {
            if (uses[item] != null && isIdle(item, uses, inGiven)) {
                out.set(item);
                uses[item] = null;
                dropped = true;
            }
        }
        return dropped;
    }

    private boolean isIdle(int item, BitSet[] uses, BitSet inGiven) {
        Clause shared = clauses.get(uses[item].nextSetBit(0));
        for (int other : shared.oneOf()) {
            boolean better = weight[other] < weight[item]
                    || weight[other] == weight[item] && other < item
                    || weight[other] == weight[item] && !uses[item].equals(uses[other]);
            if (other != item
                    && uses[other] != null
                    && better
                    && !inGiven.get(other)
                    && Landmarks.contains(uses[other], uses[item])) {
                return true;
            }
        }
        return false;
    }

    @Override
    public String toString() {
        return Arrays.toString(clauses.toArray());
    }
}

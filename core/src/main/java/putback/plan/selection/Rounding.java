package putback.plan.selection;

import java.util.BitSet;
import java.util.List;

/** Makes a whole choice of a relaxed one: what is mostly taken, what is then missing, and nothing that can be spared. */
final class Rounding {
    private static final double MOSTLY = 0.5;

    private final long[] weight;
    private final List<Clause> clauses;
    private final Relaxation relaxation;
    private final BitSet chosen = new BitSet();
    private final int[] uses;

    Rounding(long[] weight, List<Clause> clauses, Relaxation relaxation) {
        this.weight = weight;
        this.clauses = clauses;
        this.relaxation = relaxation;
        this.uses = new int[weight.length];
    }

    /** Items that meet all clauses, as far as what is fixed lets them. */
    BitSet chosen() {
        chosen.clear();
        for (int item = 0; item < weight.length; item++) {
            chosen.set(item, relaxation.share(item) >= MOSTLY);
        }
        while (true) {
            int next = mostUseful();
            if (next < 0) {
                break;
            }
            chosen.set(next);
        }
        spare();
        return (BitSet) chosen.clone();
    }

    /** The item that meets unmet clauses at the least price; below 0 when none is left that could. */
    private int mostUseful() {
        java.util.Arrays.fill(uses, 0);
        for (int i = 0; i < clauses.size(); i++) {
            if (!isMet(clauses.get(i), chosen)) {
                for (int item : clauses.get(i).oneOf()) {
                    uses[item]++;
                }
            }
        }
        int best = -1;
        double least = Double.POSITIVE_INFINITY;
        for (int item = 0; item < uses.length; item++) {
            if (uses[item] > 0 && relaxation.isFree(item)) {
                double price = (weight[item] + 1) * (1.05 - relaxation.share(item)) / uses[item];
                if (price < least) {
                    best = item;
                    least = price;
                }
            }
        }
        return best;
    }

    /** Leaves out heavy items first. */
    private void spare() {
        BitSet tried = new BitSet();
        while (true) {
            int heaviest = -1;
            for (int item = chosen.nextSetBit(0); item >= 0; item = chosen.nextSetBit(item + 1)) {
                if (!tried.get(item) && relaxation.isFree(item) && (heaviest < 0 || weight[item] > weight[heaviest])) {
                    heaviest = item;
                }
            }
            if (heaviest < 0) {
                return;
            }
            tried.set(heaviest);
            chosen.clear(heaviest);
            chosen.set(heaviest, !meetsAll(heaviest));
        }
    }

    private boolean meetsAll(int item) {
        for (int i = 0; i < clauses.size(); i++) {
            if (!isMet(clauses.get(i), chosen) && contains(clauses.get(i).oneOf(), item)) {
                return false;
            }
        }
        return true;
    }

    static boolean contains(int[] items, int item) {
        for (int one : items) {
            if (one == item) {
                return true;
            }
        }
        return false;
    }

    static boolean isMet(Clause clause, BitSet chosen) {
        for (int item : clause.oneOf()) {
            if (chosen.get(item)) {
                return true;
            }
        }
        for (int item : clause.given()) {
            if (!chosen.get(item)) {
                return true;
            }
        }
        return false;
    }
}

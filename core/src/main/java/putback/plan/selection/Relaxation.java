package putback.plan.selection;

import java.util.Arrays;
import java.util.BitSet;
import org.jspecify.annotations.Nullable;

/**
 * The least weight that meets clauses when items may be taken in part: a bound on the weight of every choice.
 *
 * <p>The bound is certain although it is found with rounding: the prices of the clauses, whatever they are as long as
 * none is below 0, are made whole numbers, and what they prove is added up in whole numbers.
 */
final class Relaxation {
    private static final int STEPS = 3000;
    private static final double MUCH = 64;
    private static final int RENEWED = 1000;

    /** So many clauses are no burden. */
    private static final int FEW = 64;

    private final long[] weight;
    private final Effort effort;
    private final int shift;
    private final double unit;
    private Tableau tableau;
    private final int most;
    private int pivots;
    private final BitSet shown = new BitSet();
    private final byte[] fixed;
    private final long[] left;
    /** By slot; null where a clause was taken out. */
    private @Nullable Clause[] rows = new Clause[64];

    private int slots;
    private int count;
    private int enough = FEW;
    private final BitSet emptySlots = new BitSet();
    private long base;
    private long bound;
    private int stepsLeft;
    private final double total;
    /** How many times what cannot be met is counted. */
    private double much;

    /**
     * @param most clauses at most
     * @param effort is told what solving takes
     */
    Relaxation(long[] weight, int most, Effort effort) {
        this.effort = effort;
        this.weight = weight;
        long sum = 1;
        long heaviest = 1;
        for (long one : weight) {
            sum += one;
            heaviest = Math.max(heaviest, one);
        }
        this.shift = Math.max(0, Long.numberOfLeadingZeros(sum) - 15);
        this.unit = heaviest;
        this.total = sum;
        this.most = most;
        this.tableau = new Tableau(weight.length + most);
        this.fixed = new byte[weight.length];
        this.left = new long[weight.length];
        Arrays.fill(fixed, (byte) -1);
    }

    /**
     * @return the slot of the clause, for as long as it is in
     */
    int add(Clause clause) {
        show(clause.oneOf());
        show(clause.given());
        int slot = emptySlots.isEmpty() ? slots++ : emptySlots.nextSetBit(0);
        emptySlots.clear(slot);
        if (slot == rows.length) {
            rows = Arrays.copyOf(rows, 2 * slot);
        }
        addRow(slot, clause);
        rows[slot] = clause;
        count++;
        return slot;
    }

    private void addRow(int slot, Clause clause) {
        tableau.addRow(weight.length + slot, clause.oneOf(), clause.given(), 1.0 - clause.given().length);
    }

    /**
     * Takes out the clauses that have room, once there are many: they were of use elsewhere in the search.
     *
     * @return their slots
     */
    BitSet dropIdle() {
        BitSet dropped = new BitSet();
        if (count < enough) {
            return dropped;
        }
        for (int slot = 0; slot < slots; slot++) {
            if (rows[slot] != null && tableau.hasRoom(weight.length + slot)) {
                tableau.removeRow(weight.length + slot);
                rows[slot] = null;
                dropped.set(slot);
            }
        }
        count -= dropped.cardinality();
        emptySlots.or(dropped);
        enough = Math.max(FEW, 2 * count);
        return dropped;
    }

    /** The same programme before any step: steps add up rounding errors. */
    private void renew() {
        pivots = 0;
        tableau = new Tableau(weight.length + most);
        for (int item = shown.nextSetBit(0); item >= 0; item = shown.nextSetBit(item + 1)) {
            tableau.addColumn(item, weight[item] / unit, fixed[item] == 1 ? 1 : 0, fixed[item] == 0 ? 0 : 1);
        }
        for (int slot = 0; slot < slots; slot++) {
            Clause clause = rows[slot];
            if (clause != null) {
                addRow(slot, clause);
            }
        }
    }

    private void show(int[] items) {
        for (int item : items) {
            if (!shown.get(item)) {
                shown.set(item);
                double from = fixed[item] == 1 ? 1 : 0;
                double to = fixed[item] == 0 ? 0 : 1;
                tableau.addColumn(item, weight[item] / unit, from, to);
            }
        }
    }

    /** How much of the clause is there: below 1 it is not met. */
    double met(Clause clause) {
        double sum = clause.given().length;
        for (int item : clause.oneOf()) {
            sum += share(item);
        }
        for (int item : clause.given()) {
            sum -= share(item);
        }
        return sum;
    }

    /** How much of an item is taken, from 0 to 1. */
    double share(int item) {
        return shown.get(item) ? tableau.value(item) : fixed[item] == 1 ? 1 : 0;
    }

    boolean isFree(int item) {
        return fixed[item] < 0;
    }

    boolean isIn(int item) {
        return fixed[item] == 1;
    }

    /** Takes the item in, or leaves it out. */
    void fix(int item, boolean in) {
        fixed[item] = (byte) (in ? 1 : 0);
        if (shown.get(item)) {
            tableau.bound(item, in ? 1 : 0, in ? 1 : 0);
        }
        base += in ? weight[item] : 0;
    }

    void free(int item) {
        base -= isIn(item) ? weight[item] : 0;
        fixed[item] = -1;
        if (shown.get(item)) {
            tableau.bound(item, 0, 1);
        }
    }

    /** The items that some clause names. */
    BitSet shown() {
        return shown;
    }

    /** Solves until the bound is the best there is or reaches the limit; false when it reaches it. */
    boolean solve(long limit) {
        if (pivots > RENEWED) {
            renew();
        }
        stepsLeft = STEPS;
        long now = prove();
        tableau.raised();
        double rise = 0;
        while (now < limit && stepsLeft-- > 0 && tableau.step()) {
            pivots++;
            effort.spend((long) (tableau.rows() + 1) * shown.cardinality());
            rise += tableau.raised() * unit;
            if (rise >= limit - now) {
                now = prove();
                rise = 0;
            }
        }
        tableau.findRay();
        much = tableau.hasRay() ? MUCH * total / unit : 0;
        now = prove();
        much = 0;
        return now < limit;
    }

    long bound() {
        return bound;
    }

    /** A choice in which the item is not as it is in the relaxation weighs at least the bound and this. */
    long change(int item) {
        return Math.abs(left[item]) >> shift;
    }

    /** Whether it would cost more to leave the item out than to take it in. */
    boolean isDearOut(int item) {
        return left[item] < 0;
    }

    /** Adds up what the prices prove. */
    private long prove() {
        for (int item = shown.nextSetBit(0); item >= 0; item = shown.nextSetBit(item + 1)) {
            left[item] = weight[item] << shift;
        }
        double scale = unit * (1L << shift);
        long sum = 0;
        for (int slot = 0; slot < slots; slot++) {
            Clause clause = rows[slot];
            double price = clause == null ? 0 : price(slot);
            if (clause != null && price > 0) {
                long whole = (long) (price * scale);
                sum += whole * (1 - clause.given().length);
                subtract(clause.oneOf(), whole);
                subtract(clause.given(), -whole);
            }
        }
        for (int item = shown.nextSetBit(0); item >= 0; item = shown.nextSetBit(item + 1)) {
            if (fixed[item] == 1) {
                sum += left[item] - (weight[item] << shift);
            } else if (fixed[item] < 0) {
                sum += Math.min(0, left[item]);
            }
        }
        bound = base - (-sum >> shift);
        return bound;
    }

    private double price(int slot) {
        return tableau.reducedCost(weight.length + slot) + much * tableau.ray(weight.length + slot);
    }

    private void subtract(int[] items, long amount) {
        for (int item : items) {
            left[item] -= amount;
        }
    }
}

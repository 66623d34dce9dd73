package putback.plan.selection;

import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Chooses the items of least weight that meet all clauses and are sound, by branch and bound over relaxed choices.
 *
 * <p>For what {@link CoverSolver} does not settle at once. There is one tree for all rounds: a choice that is lighter
 * than the best is looked at as soon as it turns up, and what it lacks is added as clauses where the search stands. Only
 * clauses that a relaxed choice breaks are in the relaxation.
 */
final class CoverTree {
    /** Says what a choice lacks. */
    interface Doubts {
        /** Adds clauses that the choice does not meet to the end of the list; false when it lacks nothing. */
        boolean learn(BitSet chosen);
    }

    private static final double WHOLE = 1e-6;

    /** One node of so many is rounded to a choice. */
    private static final int ROUNDED = 6;

    private static final int MOST_CLAUSES = 20_000;

    private final long[] weight;
    private final List<Clause> clauses;
    private final Doubts doubts;
    private final Effort effort;
    private final Relaxation relaxation;
    private final Rounding rounding;
    private final BitSet related = new BitSet();
    /** Which clause is in a slot of the relaxation. */
    private int[] inSlot = new int[64];

    private final int[] trail;
    private int trailed;
    private long limit;
    /** Whether it will do to find nothing. */
    private boolean limited;

    private long nodes;
    /** No cover that the search has left out weighs less. */
    private long givenUp = CoverSolver.NO_LIMIT;

    private @Nullable Cover best;

    /**
     * @param clauses may grow while the search is on
     * @param effort the search gives up once it is used up; without a limit, only when it has found a choice
     */
    CoverTree(long[] weight, List<Clause> clauses, Doubts doubts, Effort effort) {
        this.weight = weight;
        this.clauses = clauses;
        this.doubts = doubts;
        this.effort = effort;
        this.relaxation = new Relaxation(weight, MOST_CLAUSES, effort);
        this.rounding = new Rounding(weight, clauses, relaxation);
        this.trail = new int[weight.length];
    }

    /** No sound cover below the limit asked for weighs less; {@link CoverSolver#NO_LIMIT} when there is none. */
    long bound() {
        return best == null ? givenUp : Math.min(limit, givenUp);
    }

    private boolean isOver() {
        return (best != null || limited) && effort.usedUp();
    }

    long nodes() {
        return nodes;
    }

    /** The sound cover of least weight below the limit, or null when there is none. */
    @Nullable
    Cover least(BitSet in, BitSet out, long below) {
        for (int item = out.nextSetBit(0); item >= 0; item = out.nextSetBit(item + 1)) {
            relaxation.fix(item, false);
        }
        for (int item = in.nextSetBit(0); item >= 0; item = in.nextSetBit(item + 1)) {
            if (!relaxation.isFree(item)) {
                return null;
            }
            relaxation.fix(item, true);
        }
        limit = Math.min(below, allWeight() + 1);
        limited = below < CoverSolver.NO_LIMIT;
        explore(0);
        return best;
    }

    /**
     * @param known no cover here weighs less
     */
    private void explore(long known) {
        if (isOver()) {
            givenUp = Math.min(givenUp, known);
            return;
        }
        nodes++;
        dropIdle();
        int mark = trailed;
        if (tighten()) {
            long bound = Math.max(known, relaxation.bound());
            int item = mostDoubtful();
            if (item >= 0) {
                boolean inFirst = relaxation.share(item) > 0.4;
                decide(item, inFirst, bound);
                decide(item, !inFirst, bound);
            } else if (isOver()) {
                givenUp = Math.min(givenUp, bound);
            }
        }
        undo(mark);
    }

    private void decide(int item, boolean in, long known) {
        int mark = trailed;
        fix(item, in);
        explore(known);
        undo(mark);
    }

    private void fix(int item, boolean in) {
        relaxation.fix(item, in);
        trail[trailed++] = item;
    }

    private void undo(int mark) {
        while (trailed > mark) {
            relaxation.free(trail[--trailed]);
        }
    }

    /** Raises the bound as far as it goes without a decision; false when nothing below the limit is left here. */
    private boolean tighten() {
        while (true) {
            if (!relaxation.solve(limit)) {
                return false;
            }
            if (relateBroken() || fixTooDear()) {
                continue;
            }
            if (isOver() || nodes % ROUNDED != 1 && hasParts()) {
                return true;
            }
            BitSet chosen = rounding.chosen();
            long sum = sum(chosen);
            if (sum >= limit || !meetsAll(chosen)) {
                return true;
            }
            if (!doubts.learn(chosen)) {
                best = new Cover(chosen, sum);
                limit = sum;
            }
        }
    }

    /** True when there were clauses that the relaxed choice breaks. */
    private boolean relateBroken() {
        boolean broken = false;
        for (int i = related.nextClearBit(0); i < clauses.size(); i = related.nextClearBit(i + 1)) {
            if (relaxation.met(clauses.get(i)) < 1 - WHOLE) {
                relate(i);
                broken = true;
            }
        }
        return broken;
    }

    private void relate(int clause) {
        int slot = relaxation.add(clauses.get(clause));
        if (slot >= inSlot.length) {
            inSlot = Arrays.copyOf(inSlot, 2 * slot);
        }
        inSlot[slot] = clause;
        related.set(clause);
    }

    private void dropIdle() {
        BitSet dropped = relaxation.dropIdle();
        for (int slot = dropped.nextSetBit(0); slot >= 0; slot = dropped.nextSetBit(slot + 1)) {
            related.clear(inSlot[slot]);
        }
    }

    /** Decides items that the bound leaves one way only; true when the relaxed choice was against it. */
    private boolean fixTooDear() {
        boolean moved = false;
        BitSet shown = relaxation.shown();
        for (int item = shown.nextSetBit(0); item >= 0; item = shown.nextSetBit(item + 1)) {
            if (relaxation.isFree(item) && relaxation.bound() + relaxation.change(item) >= limit) {
                boolean in = relaxation.isDearOut(item);
                moved |= Math.abs(relaxation.share(item) - (in ? 1 : 0)) > WHOLE;
                fix(item, in);
            }
        }
        return moved;
    }

    /** Whether some item is taken in part. */
    private boolean hasParts() {
        BitSet shown = relaxation.shown();
        for (int item = shown.nextSetBit(0); item >= 0; item = shown.nextSetBit(item + 1)) {
            double share = relaxation.share(item);
            if (Math.min(share, 1 - share) > WHOLE) {
                return true;
            }
        }
        return false;
    }

    private boolean meetsAll(BitSet chosen) {
        for (int i = 0; i < clauses.size(); i++) {
            if (!Rounding.isMet(clauses.get(i), chosen)) {
                return false;
            }
        }
        return true;
    }

    /** An item that is neither wholly in nor out, else any that is not decided; below 0 when all are. */
    private int mostDoubtful() {
        int best = -1;
        double most = -1;
        BitSet shown = relaxation.shown();
        for (int item = shown.nextSetBit(0); item >= 0; item = shown.nextSetBit(item + 1)) {
            if (relaxation.isFree(item)) {
                double share = relaxation.share(item);
                double part = Math.min(share, 1 - share);
                double doubt = part < WHOLE ? 0 : part * (weight[item] + 1);
                if (doubt > most) {
                    best = item;
                    most = doubt;
                }
            }
        }
        return best;
    }

    private long allWeight() {
        long sum = 0;
        for (long one : weight) {
            sum += one;
        }
        return sum;
    }

    private long sum(BitSet chosen) {
        long sum = 0;
        for (int item = chosen.nextSetBit(0); item >= 0; item = chosen.nextSetBit(item + 1)) {
            sum += weight[item];
        }
        return sum;
    }
}

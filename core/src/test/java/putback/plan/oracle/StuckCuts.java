package putback.plan.oracle;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Random;

/**
 * Says why a choice of joints and asides cannot be opened, as a condition that every sound choice meets.
 *
 * <p>An item is a joint or an aside. Let U be joints and B items such that, when all joints of B but those of U are
 * opened as far as the rules let one, {@code ahead-of} disregarded, each u of U is still inaccessible or has another
 * joint of U that must come first. Then a sound choice with all of U has an item outside B. Proof: suppose all its items
 * are in B, and let u be the first of U that it opens. What it has opened before is in B without U, in an order that the
 * rules allow, so it is among what was opened above, and what is accessible stays so when more is open or aside; hence
 * u was accessible there. So another joint of U has to come before u, against the choice of u.
 *
 * <p>Conversely a choice that cannot be opened, U being what is left of it and B being the choice itself, meets the
 * premise and breaks the condition. So conditions can be added until the cheapest choice that meets them all can be
 * opened: that choice is then the cheapest of all sound ones, and there are only finitely many choices.
 */
final class StuckCuts {
    /** All joints of {@code together} need one of these joints or asides. */
    record Cut(BitSet together, BitSet joints, BitSet asides) {}

    private static final int ORDERS = 2;

    private final Rules rules;
    private final BitSet everyJoint;
    private final BitSet everyAside;
    private final Random random = new Random(1);

    StuckCuts(Rules rules, BitSet everyJoint, BitSet everyAside) {
        this.rules = rules;
        this.everyJoint = everyJoint;
        this.everyAside = everyAside;
    }

    /** At least one for a choice that cannot be opened, none for one that can. */
    List<Cut> of(BitSet joints, BitSet asides) {
        BitSet stuck = (BitSet) joints.clone();
        stuck.andNot(rules.reach(joints, asides, true));
        List<Cut> cuts = new ArrayList<>();
        for (int u = stuck.nextSetBit(0); u >= 0; u = stuck.nextSetBit(u + 1)) {
            BitSet alone = new BitSet();
            alone.set(u);
            if (isStuck(alone, opened(alone, new BitSet(), joints, asides), asides)) {
                addCuts(cuts, alone, joints, asides);
            }
        }
        if (cuts.isEmpty() && !stuck.isEmpty()) {
            addCuts(cuts, fewest(stuck, joints, asides), joints, asides);
        }
        return cuts;
    }

    private BitSet opened(BitSet together, BitSet start, BitSet joints, BitSet asides) {
        BitSet allowed = (BitSet) joints.clone();
        allowed.andNot(together);
        return rules.reach(start, allowed, asides, false);
    }

    private boolean isStuck(BitSet together, BitSet open, BitSet asides) {
        Bonds bonds = rules.bonds(open);
        BitSet aside = new BitSet();
        asides.stream().filter(p -> rules.canGoAside(p, open)).forEach(aside::set);
        return together.stream().allMatch(u -> isStuck(u, together, open, bonds, aside));
    }

    private boolean isStuck(int u, BitSet together, BitSet open, Bonds bonds, BitSet aside) {
        return rules.comeFirst(u).stream().anyMatch(together::get) || !rules.accessible(u, open, bonds, aside);
    }

    /** Leaves out of the stuck joints what is not needed for them to lock each other. */
    private BitSet fewest(BitSet stuck, BitSet joints, BitSet asides) {
        BitSet fewest = stuck;
        for (int u = stuck.nextSetBit(0); u >= 0; u = stuck.nextSetBit(u + 1)) {
            BitSet fewer = (BitSet) fewest.clone();
            fewer.clear(u);
            if (!fewer.isEmpty() && isStuck(fewer, opened(fewer, new BitSet(), joints, asides), asides)) {
                fewest = fewer;
            }
        }
        return fewest;
    }

    private void addCuts(List<Cut> cuts, BitSet together, BitSet joints, BitSet asides) {
        for (int order = 0; order < ORDERS; order++) {
            cuts.add(widest(together, joints, asides, order == 0));
        }
    }

    /** Adds items to B, cheap ones first or in any order, as long as the joints stay stuck. */
    private Cut widest(BitSet together, BitSet joints, BitSet asides, boolean cheapFirst) {
        BitSet allJoints = (BitSet) joints.clone();
        BitSet allAsides = (BitSet) asides.clone();
        BitSet open = opened(together, new BitSet(), allJoints, allAsides);
        Bonds bonds = rules.bonds(open);
        for (int item : missing(joints, asides, cheapFirst)) {
            BitSet to = item >= 0 ? allJoints : allAsides;
            int bit = item >= 0 ? item : -item;
            to.set(bit);
            if (idle(item, together, open, bonds, allAsides)) {
                continue;
            }
            BitSet wider = opened(together, open, allJoints, allAsides);
            if (isStuck(together, wider, allAsides)) {
                open = wider;
                bonds = rules.bonds(open);
            } else {
                to.clear(bit);
            }
        }
        return new Cut(together, without(everyJoint, allJoints), without(everyAside, allAsides));
    }

    /** Whether an item changes nothing as things stand, since it cannot be used yet. */
    private boolean idle(int item, BitSet together, BitSet open, Bonds bonds, BitSet asides) {
        if (item < 0) {
            return !rules.canGoAside(-item, open);
        }
        BitSet aside = new BitSet();
        asides.stream().filter(p -> rules.canGoAside(p, open)).forEach(aside::set);
        return together.get(item) || !rules.accessible(item, open, bonds, aside);
    }

    private static BitSet without(BitSet all, BitSet some) {
        BitSet rest = (BitSet) all.clone();
        rest.andNot(some);
        return rest;
    }

    /** Joints by their number, asides by the negative number of the part, which is never 0. */
    private List<Integer> missing(BitSet joints, BitSet asides, boolean cheapFirst) {
        List<Integer> items = new ArrayList<>();
        everyJoint.stream().filter(j -> !joints.get(j)).forEach(items::add);
        everyAside.stream().filter(p -> !asides.get(p)).forEach(p -> items.add(-p));
        Collections.shuffle(items, random);
        if (cheapFirst) {
            items.sort(Comparator.comparingLong(i -> i >= 0 ? rules.jointCost(i) : rules.asideCost(-i)));
        }
        return items;
    }
}

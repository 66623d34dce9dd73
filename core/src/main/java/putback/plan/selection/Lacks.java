package putback.plan.selection;

import java.util.BitSet;
import putback.plan.access.Network;
import putback.plan.access.Ties;

/**
 * Finds what a choice lacks, as clauses that every sound plan meets and the choice does not.
 *
 * <p>What is missing in plain sight comes first, then smallest sets ({@link Landmarks}), then what holds only for plans
 * that make the same choice: a joint that comes ahead of another, a part that falls free.
 */
final class Lacks {
    /** What is missing in plain sight is quick to find but weak; after so many rounds the smallest sets are looked for. */
    private static final int PLAIN_ROUNDS = 3;

    private final Network network;
    private final Items items;
    private final Opening opening;
    private final Landmarks landmarks;
    private final Hindrances hindrances;
    private final BitSet goal;
    private final Known known;
    private int rounds;

    /**
     * @param usable items that some plan can have
     * @param known where the clauses go
     */
    Lacks(Demand demand, Items items, Opening opening, BitSet usable, Known known) {
        this.network = demand.network();
        this.items = items;
        this.opening = opening;
        this.landmarks = new Landmarks(items, opening, usable);
        this.hindrances = new Hindrances(demand, items);
        this.goal = demand.required();
        this.known = known;
    }

    /** Adds clauses that the chosen items do not meet; false when they open everything soundly. */
    boolean learn(BitSet chosen, BitSet out) {
        int before = known.size();
        if (rounds++ < PLAIN_ROUNDS) {
            learnHindrances(chosen);
            if (known.size() > before) {
                return true;
            }
        }
        learnMissing(chosen, goal, new BitSet(), out);
        if (known.size() > before) {
            return true;
        }
        BitSet joints = chosen.get(0, items.joints);
        BitSet open = opening.opened(chosen, new BitSet(), new BitSet());
        BitSet stuck = (BitSet) joints.clone();
        stuck.andNot(open);
        for (int joint = stuck.nextSetBit(0); joint >= 0; joint = stuck.nextSetBit(joint + 1)) {
            learnStuck(chosen, Items.single(joint), new BitSet(), out);
        }
        if (stuck.isEmpty()) {
            learnOrder(chosen, joints, out);
        }
        learnFreed(chosen, joints);
        return known.size() > before;
    }

    /** What each stuck joint lacks in plain sight. Joints that wait for each other in a circle show nothing here. */
    private void learnHindrances(BitSet chosen) {
        BitSet open = opening.opened(chosen, new BitSet(), new BitSet());
        BitSet stuck = chosen.get(0, items.joints);
        stuck.andNot(open);
        for (int joint = stuck.nextSetBit(0); joint >= 0; joint = stuck.nextSetBit(joint + 1)) {
            for (BitSet needed : hindrances.of(joint, chosen, open)) {
                if (!needed.intersects(chosen)) {
                    known.add(Clause.ifThen(Items.single(joint), needed));
                }
            }
        }
    }

    /** Several sets at once: after each, its cheapest item is taken in, until the goal opens. */
    private void learnMissing(BitSet chosen, BitSet wanted, BitSet planned, BitSet out) {
        BitSet allowed = (BitSet) chosen.clone();
        long[] worth = landmarks.freshWorth();
        while (!Landmarks.contains(opening.openedUntil(wanted, allowed, new BitSet(), planned), wanted)) {
            BitSet missing = landmarks.missing(allowed, planned, wanted, out, worth);
            known.add(Clause.oneOf(missing));
            BitSet usable = (BitSet) missing.clone();
            usable.andNot(out);
            if (usable.isEmpty()) {
                return;
            }
            allow(usable, worth, allowed);
        }
    }

    /** Takes the least worth off all of them, and takes in those that have none left. */
    private static void allow(BitSet usable, long[] worth, BitSet allowed) {
        long least = Long.MAX_VALUE;
        for (int item = usable.nextSetBit(0); item >= 0; item = usable.nextSetBit(item + 1)) {
            least = Math.min(least, worth[item]);
        }
        for (int item = usable.nextSetBit(0); item >= 0; item = usable.nextSetBit(item + 1)) {
            worth[item] -= least;
            if (worth[item] == 0) {
                allowed.set(item);
            }
        }
    }

    /** If the joint is opened, one of what it still misses is needed. */
    private void learnStuck(BitSet chosen, BitSet stuck, BitSet planned, BitSet out) {
        BitSet missing = landmarks.missing(chosen, planned, stuck, out, landmarks.freshWorth());
        BitSet given = (BitSet) stuck.clone();
        given.or(planned);
        known.add(Clause.ifThen(given, missing));
    }

    /** If joints are opened that come ahead of others and cannot, something else is needed. */
    private void learnOrder(BitSet chosen, BitSet joints, BitSet out) {
        BitSet open = opening.opened(chosen, new BitSet(), joints);
        BitSet stuck = (BitSet) joints.clone();
        stuck.andNot(open);
        if (stuck.isEmpty()) {
            return;
        }
        BitSet ahead = new BitSet();
        for (int joint = stuck.nextSetBit(0); joint >= 0; joint = stuck.nextSetBit(joint + 1)) {
            for (int other : network.opensBehind(joint)) {
                if (stuck.get(other)) {
                    ahead.set(other);
                }
            }
        }
        learnStuck(chosen, ahead, ahead, out);
    }

    /** If joints are open that alone keep a part from the body, its handling is paid. */
    private void learnFreed(BitSet chosen, BitSet joints) {
        Ties ties = new Ties(network);
        ties.rebuild(joints);
        for (int part = 1; part < items.parts; part++) {
            if (!chosen.get(items.handling(part)) && !ties.heldToBody(part)) {
                known.add(Clause.ifThen(cut(ties, part, joints), Items.single(items.handling(part))));
            }
        }
    }

    /** Open joints that, as long as they are open, keep the part from the body whatever else is closed. */
    private BitSet cut(Ties ties, int part, BitSet joints) {
        BitSet cut = new BitSet();
        for (int other = 1; other < items.parts; other++) {
            boolean inGroup = other == part || !network.isTether(other) && ties.heldTogether(other, part);
            if (inGroup) {
                for (int joint : network.jointsOf(other)) {
                    if (joints.get(joint)) {
                        cut.set(joint);
                    }
                }
            }
        }
        return cut;
    }
}

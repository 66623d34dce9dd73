package putback.plan.selection;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import putback.plan.access.Network;
import putback.plan.access.Ties;

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

    /** What is missing in plain sight is quick to find but weak; after so many rounds the smallest sets are looked for. */
    private static final int PLAIN_ROUNDS = 3;

    private static final long BUDGET = 2_000_000;

    /** A cover that takes more nodes than this is found by the other method. */
    private static final long EASY = 40;

    /** Nodes to tell whether there is room. */
    private static final long TELLING = 2_000;

    private final Demand demand;
    private final Network network;
    private final Items items;
    private final Opening opening;
    private final Landmarks landmarks;
    private final Hindrances hindrances;
    private final Set<Clause> clauses = new HashSet<>();
    private final List<Clause> known = new ArrayList<>();
    private final BitSet free = new BitSet();
    /** Items that some clause asks for. */
    private final BitSet askedFor = new BitSet();

    private final BitSet goal;
    private int rounds;
    private long effort;

    public LeastWork(Demand demand) {
        this.demand = demand;
        this.network = demand.network();
        this.items = new Items(demand);
        this.opening = new Opening(demand, items);
        this.hindrances = new Hindrances(demand, items);
        this.goal = demand.required();
        BitSet usable = usable();
        this.landmarks = new Landmarks(items, opening, usable);
        for (int item = usable.nextSetBit(items.joints); item >= 0; item = usable.nextSetBit(item + 1)) {
            free.set(item, items.weight[item] == 0);
        }
        BitSet none = new BitSet();
        for (int joint = goal.nextSetBit(0); joint >= 0; joint = goal.nextSetBit(joint + 1)) {
            learnt(Clause.ifThen(none, single(joint)));
        }
    }

    private void learnt(Clause clause) {
        if (clauses.add(clause)) {
            known.add(clause);
        }
        for (int item : clause.oneOf()) {
            askedFor.set(item);
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

    private static BitSet single(int item) {
        BitSet one = new BitSet();
        one.set(item);
        return one;
    }

    /**
     * The least work among plans of the given kind.
     *
     * @param within joints and asides that are in or out beyond what is required
     * @param limit choices whose rank is not below it are not looked for
     * @return null when there is no such plan
     */
    public @Nullable Choice least(Within within, long limit) {
        BitSet in = in(within);
        BitSet out = out(within);
        while (true) {
            CoverSolver solver = new CoverSolver(items.weight, EASY);
            Cover cover = solver.least(known, in, out, limit);
            effort += solver.nodes();
            if (solver.exhausted()) {
                return hard(in, out, limit);
            }
            if (cover == null) {
                return null;
            }
            BitSet chosen = withFree(cover.items(), out);
            if (!learn(chosen, out)) {
                return choice(chosen, in, cover.weight());
            }
        }
    }

    private @Nullable Choice hard(BitSet in, BitSet out, long limit) {
        CoverTree tree = new CoverTree(items.weight, known, new Lacking(out), BUDGET);
        Cover cover = tree.least(in, out, limit);
        effort += tree.nodes();
        if (tree.exhausted()) {
            throw new IllegalStateException("No proof of the least work after " + BUDGET + " nodes.");
        }
        return cover == null ? null : choice(withFree(cover.items(), out), in, cover.weight());
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
            return LeastWork.this.learn(withFree(cover, out), out);
        }
    }

    /**
     * The same for a joint put into a kind of choice whose least rank is known: one that no clause asks for adds all of
     * its weight.
     */
    public boolean mayBeBelow(Within withJoint, int joint, long leastRank, long limit) {
        return askedFor.get(joint)
                ? mayBeBelow(withJoint, limit)
                : leastRank + items.weight[joint] < limit && mayBeBelow(withJoint, limit);
    }

    /**
     * Whether what is known so far leaves room for a choice of the given kind below the limit; true as well where that
     * would take long to tell.
     */
    public boolean mayBeBelow(Within within, long limit) {
        CoverSolver solver = new CoverSolver(items.weight, TELLING);
        Cover cover = solver.least(known, in(within), out(within), limit);
        effort += solver.nodes();
        return cover != null || solver.exhausted();
    }

    /** Nodes of search so far, over all questions. */
    public long effort() {
        return effort;
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

    /** Adds clauses that the chosen items do not meet; false when they open everything soundly. */
    private boolean learn(BitSet chosen, BitSet out) {
        int before = clauses.size();
        if (rounds++ < PLAIN_ROUNDS) {
            learnHindrances(chosen);
            if (clauses.size() > before) {
                return true;
            }
        }
        learnMissing(chosen, goal, new BitSet(), out);
        if (clauses.size() > before) {
            return true;
        }
        BitSet joints = chosen.get(0, items.joints);
        BitSet open = opening.opened(chosen, new BitSet(), new BitSet());
        BitSet stuck = (BitSet) joints.clone();
        stuck.andNot(open);
        for (int joint = stuck.nextSetBit(0); joint >= 0; joint = stuck.nextSetBit(joint + 1)) {
            learnStuck(chosen, single(joint), new BitSet(), out);
        }
        if (stuck.isEmpty()) {
            learnOrder(chosen, joints, out);
        }
        learnFreed(chosen, joints);
        return clauses.size() > before;
    }

    /** What each stuck joint lacks in plain sight. Joints that wait for each other in a circle show nothing here. */
    private void learnHindrances(BitSet chosen) {
        BitSet open = opening.opened(chosen, new BitSet(), new BitSet());
        BitSet stuck = chosen.get(0, items.joints);
        stuck.andNot(open);
        for (int joint = stuck.nextSetBit(0); joint >= 0; joint = stuck.nextSetBit(joint + 1)) {
            for (BitSet needed : hindrances.of(joint, chosen, open)) {
                if (!needed.intersects(chosen)) {
                    learnt(Clause.ifThen(single(joint), needed));
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
            learnt(Clause.oneOf(missing));
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
        learnt(Clause.ifThen(given, missing));
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
                learnt(Clause.ifThen(cut(ties, part, joints), single(items.handling(part))));
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

    /** How many sets have been collected so far. */
    public int clauses() {
        return clauses.size();
    }

    List<Clause> known() {
        return List.copyOf(known);
    }
}
